using Sightglass.Basics.Numbers;

namespace Sightglass.Network.Groups;

/// <summary>All guards of a group, worked out together: what several of them look at is worked out once.</summary>
public abstract class GuardSheet
{
    /// <param name="state">What they look at.</param>
    /// <param name="wanted">Which of them.</param>
    /// <param name="values">Takes their values, by their numbers.</param>
    public abstract void Evaluate(in StateView state, GuardSet wanted, Span<Lanes> values);
}
