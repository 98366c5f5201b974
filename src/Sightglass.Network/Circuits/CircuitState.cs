namespace Sightglass.Network.Circuits;

/// <summary>
/// What a circuit came to, and the room in which it was worked out. It remembers which coils were up, which decides between picking and dropping; everything else follows
/// from the inputs.
/// </summary>
public sealed class CircuitState
{
    internal CircuitState(Circuit circuit, int places)
    {
        Circuit = circuit;
        Volts = new double[circuit.Nodes];
        Amperes = new double[circuit.Branches];
        Conductances = new double[circuit.Branches];
        Openings = new double[circuit.Branches];
        Forces = new double[circuit.Branches];
        UpCoils = new bool[circuit.Coils];
        Before = new bool[circuit.Coils];
        Together = new bool[circuit.Coils];
        Moves = new int[circuit.Coils];
        Conducting = new bool[circuit.Diodes];
        Values = new double[circuit.Nodes];
        Roots = new int[circuit.Nodes];
        Shares = new double[places];
        Meshed = new double[places];
        Driven = new double[places];
        Factored = new double[circuit.Branches];
        BadInputs = new bool[circuit.Inputs];
        Given = new double[circuit.Inputs];
    }

    public Circuit Circuit { get; }

    public CircuitOutcome Outcome { get; internal set; }

    /// <summary>V, one a node, over the node that is held at 0 or, in a part that nothing holds, over one of its own.</summary>
    public ReadOnlySpan<double> Voltages => Volts;

    /// <summary>A, one a branch, from its first node to its second (of a source out at plus, of a diode forwards).</summary>
    public ReadOnlySpan<double> Currents => Amperes;

    /// <summary>Which coils are up.</summary>
    public ReadOnlySpan<bool> Up => UpCoils;

    /// <summary>How many times the circuit was solved for the last result.</summary>
    public int Rounds { get; internal set; }

    internal double[] Volts { get; }

    internal double[] Amperes { get; }

    /// <summary>By branch, as solved.</summary>
    internal double[] Conductances { get; }

    /// <summary>By branch: what its opening makes of its conductance, whatever coils and diodes do.</summary>
    internal double[] Openings { get; }

    internal double[] Forces { get; }

    internal bool[] UpCoils { get; }

    /// <summary>As they were before the last inputs.</summary>
    internal bool[] Before { get; }

    /// <summary>Which coils wanted to move in the last round in which all moved at once.</summary>
    internal bool[] Together { get; }

    /// <summary>How often each moved when one moved at a time.</summary>
    internal int[] Moves { get; }

    internal bool[] Conducting { get; }

    /// <summary>By position in the order of elimination.</summary>
    internal double[] Values { get; }

    internal int[] Roots { get; }

    internal double[] Shares { get; }

    /// <summary>S, one a place, those of the meshes among them.</summary>
    internal double[] Meshed { get; }

    internal double[] Driven { get; }

    /// <summary>The conductances that <see cref="Shares"/> are made of.</summary>
    internal double[] Factored { get; }

    internal bool HasFactors { get; set; }

    internal bool[] BadInputs { get; }

    /// <summary>The inputs as they count.</summary>
    internal double[] Given { get; }

    /// <summary>Whether the diodes came to no rest within their bound.</summary>
    internal bool RestlessDiode { get; set; }

    internal bool AnySource { get; set; }

    public double Voltage(Node node) => Volts[node.Index];

    public double Current(Branch branch) => Amperes[branch.Index];

    /// <summary>Whether a branch conducts: its opening is above 0 and its contact, where it is one, is made.</summary>
    public bool IsMade(Branch branch) => Conductances[branch.Index] > 0;

    public bool IsUp(Coil coil) => UpCoils[coil.Index];

    /// <summary>Whether a coil is one of those that come to no rest, where the outcome is <see cref="CircuitOutcome.Chatter"/>.</summary>
    public bool IsRestless(Coil coil) => Outcome == CircuitOutcome.Chatter && Moves[coil.Index] >= Circuit.Restless;

    /// <summary>Whether a node is joined to one whose potential is given.</summary>
    public bool IsHeld(Node node) => Roots[Circuit.PositionOf(node.Index)] < 0;

    /// <summary>Says how a coil stood before the next inputs.</summary>
    public void Set(Coil coil, bool up) => UpCoils[coil.Index] = up;
}
