using Sightglass.Network.Compile;

namespace Sightglass.Network.Springs;

/// <summary>
/// Collects rigid bodies, springs and weights, and compiles them into a <see cref="Suspension"/>. All positions are in one frame: x and y in m on the level, weights and movements downwards.
/// An equaliser is a body that hangs at its middle and stands on its ends; a softened, cracked or missing spring is an input.
/// </summary>
public sealed class SuspensionBuilder
{
    private readonly List<(string Name, double Start)> _inputs = [];
    private readonly List<BodyRow> _bodies = [];
    private readonly List<SpringRow> _springs = [];
    private readonly List<WeightRow> _weights = [];
    private int _coordinates;

    /// <summary>Adds a number that is set from outside.</summary>
    /// <param name="start">Its value when nobody has set another.</param>
    public Input AddInput(string name, double start)
    {
        _inputs.Add((name, start));
        return new(_inputs.Count - 1);
    }

    /// <summary>A rigid body.</summary>
    /// <param name="x">m, of the point about which it turns: any point of it, best its middle.</param>
    /// <param name="y">The same.</param>
    /// <param name="freedoms">How it may move; a wheelset does not pitch.</param>
    public Body AddBody(string name, double x, double y, Freedoms freedoms = Freedoms.All)
    {
        _bodies.Add(new(name, x, y, freedoms, _coordinates));
        _coordinates += int.PopCount((int)freedoms);
        return new(_bodies.Count - 1);
    }

    /// <summary>A spring at a point between a body and the one below it, or the ground.</summary>
    /// <param name="lower">Null for the ground.</param>
    /// <param name="stiffness">N/m, above 0.</param>
    /// <param name="pulls">Whether it also holds down what would lift off.</param>
    /// <param name="factor">On its stiffness: 1 whole, 0 gone; below 0 counts as 0.</param>
    /// <param name="gap">m by which it is short: what its bodies must come together before it carries. Below 0 for a shim.</param>
    public Spring AddSpring(string name, Body upper, Body? lower, double x, double y, double stiffness, bool pulls = false, Input? factor = null, Input? gap = null)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(stiffness);
        _springs.Add(new(name, upper.Index, lower?.Index ?? -1, x, y, stiffness, pulls, factor?.Index ?? -1, gap?.Index ?? -1));
        return new(_springs.Count - 1);
    }

    /// <summary>A weight at a point of a body.</summary>
    /// <param name="newtons">Downwards.</param>
    public void AddWeight(Body body, double x, double y, Input newtons) =>
        _weights.Add(new(body.Index, newtons.Index, 1, x - _bodies[body.Index].X, y - _bodies[body.Index].Y));

    /// <summary>A moment about the y axis, as a pull along x at a height makes: above 0 it presses down where x is greater.</summary>
    public void AddPitch(Body body, Input newtonMetres) => _weights.Add(new(body.Index, newtonMetres.Index, 0, 1, 0));

    /// <summary>A moment about the x axis, as cant or wind makes: above 0 it presses down where y is greater.</summary>
    public void AddRoll(Body body, Input newtonMetres) => _weights.Add(new(body.Index, newtonMetres.Index, 0, 0, 1));

    /// <summary>Compiles what was added. The builder may be used further; the suspension does not change.</summary>
    public Suspension Build() => new([.. _inputs], [.. _bodies], [.. _springs], [.. _weights], _coordinates);
}
