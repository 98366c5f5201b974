using System.Collections.Immutable;

namespace Sightglass.Trials.Consists;

/// <summary>What a train weighs, what pulls it, and what holds it on its steepest grade. SI.</summary>
public sealed record TrainPull
{
    /// <summary>kg of the whole train.</summary>
    public required double Mass { get; init; }

    /// <summary>kg of what does not pull.</summary>
    public required double Trailing { get; init; }

    /// <summary>Places in the train of the machines that pull: they answer every command that pulling takes.</summary>
    public required ImmutableArray<int> Pulling { get; init; }

    /// <summary>N that the rail holds under their driven axles.</summary>
    public required double Adhesion { get; init; }

    /// <summary>W at the rail, head-end power taken off.</summary>
    public required double Power { get; init; }

    /// <summary>N that start the train on its steepest grade and sharpest curve.</summary>
    public required double ToStart { get; init; }

    /// <summary>kg that may hang on by the rule of the manual.</summary>
    public required double Tonnage { get; init; }

    /// <summary>m/s that it comes to on that grade with all power; 0 where it does not hold even a crawl.</summary>
    public required double BalanceSpeed { get; init; }

    /// <summary>N along the rail with which the grade pulls at the standing train.</summary>
    public required double GradeForce { get; init; }

    /// <summary>N with which the train brake set in full holds it, as long as its air lasts.</summary>
    public required double BrakeForce { get; init; }

    /// <summary>Places in the train of the vehicles whose hand or parking brakes hold 1.2 times what the grade pulls, from the head; null where all of them do not.</summary>
    public required ImmutableArray<int>? HandBrakes { get; init; }

    /// <summary>Whether the rail holds what starts it.</summary>
    public bool Starts => Adhesion >= ToStart;

    /// <summary>Whether by the rule so much may hang on.</summary>
    public bool MayHaul => Trailing <= Tonnage;
}
