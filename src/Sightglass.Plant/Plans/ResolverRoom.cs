namespace Sightglass.Plant.Plans;

/// <summary>Where one world works out a resolver.</summary>
public abstract class ResolverRoom
{
    /// <summary>What it came to: one finite number for each slot that the resolver sets.</summary>
    public abstract ReadOnlySpan<double> Values { get; }

    /// <summary>Works it out, where anything that it looks at is not what it was the last time.</summary>
    /// <param name="bank">For signals.</param>
    /// <param name="lane">Of the world, 0…7.</param>
    /// <param name="slots">As they are in that lane.</param>
    /// <returns>Whether it was worked out anew.</returns>
    public abstract bool Solve(LaneBank bank, int lane, ReadOnlySpan<double> slots);

    /// <summary>Takes what slots say for what was worked out last: they come from a snapshot.</summary>
    public abstract void Remember(LaneBank bank, int lane, ReadOnlySpan<double> slots);

    /// <summary>Nothing has been worked out yet.</summary>
    public abstract void Forget();
}
