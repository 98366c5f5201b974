using System.Collections.Immutable;

namespace Sightglass.Trials.Consists;

/// <summary>The power line of a train as its load flow comes out, with everything on that its book counts as on at once.</summary>
/// <param name="Sources">In the order of the train.</param>
/// <param name="Loads">In the order of the train.</param>
/// <param name="Jumpers">Those with power pins, in the order of the train.</param>
/// <param name="Breakers">In the order of the train.</param>
public sealed record TrainPower(ImmutableArray<SourceReading> Sources, ImmutableArray<LoadReading> Loads, ImmutableArray<CurrentReading> Jumpers, ImmutableArray<CurrentReading> Breakers)
{
    /// <summary>Whether anything of it is there to be looked at.</summary>
    public bool IsThere => !Loads.IsEmpty || !Sources.IsEmpty;
}
