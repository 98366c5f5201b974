using Sightglass.Network.Compile;

namespace Sightglass.Network.Circuits;

/// <summary>
/// Collects nodes, branches and inputs, and compiles them into a <see cref="Circuit"/>. An open wire is a branch whose opening is 0, a short or a crossed wire
/// one whose opening is above 0: faults are inputs, so that a circuit is compiled once.
/// </summary>
public sealed class CircuitBuilder
{
    private readonly List<string> _nodes = [];
    private readonly List<(string Name, double Start)> _inputs = [];
    private readonly List<BranchRow> _branches = [];
    private readonly List<HoldRow> _holds = [];
    private readonly List<CoilRow> _coils = [];
    private readonly List<DiodeRow> _diodes = [];

    /// <param name="name">For findings.</param>
    public Node AddNode(string name)
    {
        _nodes.Add(name);
        return new(_nodes.Count - 1);
    }

    /// <summary>Adds a number that is set from outside: an opening or volts.</summary>
    /// <param name="name">For findings.</param>
    /// <param name="start">Its value when nobody has set another.</param>
    public Input AddInput(string name, double start)
    {
        _inputs.Add((name, start));
        return new(_inputs.Count - 1);
    }

    /// <summary>The node from which potentials count: 0 V.</summary>
    public void Hold(Node node) => _holds.Add(new(node.Index, -1));

    /// <summary>Gives a node its potential, V. Given twice, the first holds, and it is a finding when they differ.</summary>
    public void Hold(Node node, Input volts) => _holds.Add(new(node.Index, volts.Index));

    /// <summary>A wire, a jumper, a switch, a lamp, a leak: anything that current meets a resistance in.</summary>
    /// <param name="ohms">Above 0.</param>
    /// <param name="opening">Factor on its conductance, 0 or more: 0 is open, 1 whole.</param>
    public Branch AddResistance(string name, Node a, Node b, double ohms, Input? opening = null) =>
        Add(new(name, a.Index, b.Index, ConductanceOf(ohms), opening?.Index ?? -1));

    /// <summary>A source with an electromotive force and what it has inside.</summary>
    /// <param name="innerOhms">Above 0.</param>
    /// <param name="volts">Of <paramref name="plus"/> over <paramref name="minus"/> when no current flows.</param>
    public Branch AddSource(string name, Node minus, Node plus, double innerOhms, Input volts, Input? opening = null) =>
        Add(new(name, minus.Index, plus.Index, ConductanceOf(innerOhms), opening?.Index ?? -1, volts.Index));

    /// <summary>A diode: V/leak backwards; from the drop up (V − drop)/ohms more.</summary>
    /// <param name="drop">V, 0 or more.</param>
    /// <param name="ohms">Above 0.</param>
    /// <param name="leakOhms">Above 0.</param>
    public Branch AddDiode(string name, Node anode, Node cathode, double drop, double ohms, double leakOhms = 1e7, Input? opening = null)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(drop);
        Branch branch = Add(new(name, anode.Index, cathode.Index, ConductanceOf(leakOhms), opening?.Index ?? -1, Valve: _diodes.Count));
        _diodes.Add(new(branch.Index, drop, ConductanceOf(ohms)));
        return branch;
    }

    /// <summary>A coil. One that is down goes up at the voltage of picking, one that is up falls at that of dropping.</summary>
    /// <param name="pick">V, above <paramref name="drop"/>.</param>
    /// <param name="drop">V, 0 or more.</param>
    /// <param name="polarised">Whether only a voltage from <paramref name="a"/> to <paramref name="b"/> moves it.</param>
    public Coil AddCoil(string name, Node a, Node b, double ohms, double pick, double drop, bool polarised = false, Input? opening = null)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(drop);
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(pick, drop);
        Branch branch = AddResistance(name, a, b, ohms, opening);
        _coils.Add(new(name, branch.Index, pick, drop, polarised));
        return new(_coils.Count - 1, branch);
    }

    /// <summary>A contact of a coil.</summary>
    /// <param name="closedWhenUp">Whether it closes when the coil goes up, or opens.</param>
    public Branch AddContact(string name, Node a, Node b, double ohms, Coil coil, bool closedWhenUp, Input? opening = null) =>
        Add(new(name, a.Index, b.Index, ConductanceOf(ohms), opening?.Index ?? -1, Gate: coil.Index, ClosedWhenUp: closedWhenUp));

    /// <summary>Compiles what was added. The builder may be used further; the circuit does not change.</summary>
    public Circuit Build() => new([.. _nodes], [.. _inputs], [.. _branches], [.. _holds], [.. _coils], [.. _diodes]);

    private Branch Add(BranchRow row)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(Math.Max(row.A, row.B), _nodes.Count);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(Math.Max(row.Opening, row.Emf), _inputs.Count);
        _branches.Add(row);
        return new(_branches.Count - 1);
    }

    private static double ConductanceOf(double ohms)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(ohms);
        if (!double.IsFinite(1 / ohms))
        {
            throw new ArgumentOutOfRangeException(nameof(ohms), ohms, "A resistance is a finite number above 0.");
        }

        return 1 / ohms;
    }
}
