using System.Collections.Immutable;
using Sightglass.Book.Consists;
using Sightglass.Book.Model;

namespace Sightglass.Trials.Consists;

/// <summary>What a check of a train has found.</summary>
/// <param name="Book">The train as one book.</param>
/// <param name="Consist">As it was listed.</param>
/// <param name="Vehicles">From its head.</param>
/// <param name="Joints">Between them.</param>
/// <param name="Order">In which order what is coupled.</param>
public sealed record TrainCheckResult(ClassBook Book, Consist Consist, ImmutableArray<CheckedVehicle> Vehicles, ImmutableArray<TrainJoint> Joints, ImmutableArray<CouplingStep> Order)
{
    /// <summary>The place of the leading machine; the first that is not hauled dead.</summary>
    public required int Lead { get; init; }

    /// <summary>Null where nothing could be run.</summary>
    public TrainPower? Power { get; init; }

    /// <summary>Null where nothing could be run.</summary>
    public TrainBrakes? Brakes { get; init; }

    /// <summary>Empty where the book says no commands, or nothing could be run.</summary>
    public ImmutableArray<CommandAnswers> Commands { get; init; } = [];

    /// <summary>Null where a mass is not known, or nothing could be run.</summary>
    public TrainPull? Pull { get; init; }

    /// <summary>Why it could not be run to the end; null where it could.</summary>
    public string? Trouble { get; init; }

    /// <summary>Pairs of lines that are coupled side by side and whose hoses can be taken for each other, each once.</summary>
    public IEnumerable<(string Line, string Other)> Mistaken => Joints
        .SelectMany(j => new[] { Vehicles[j.Ahead].End(rear: true), Vehicles[j.Ahead + 1].End(rear: false) }.OfType<CouplingEnd>().SelectMany(e => e.Mistaken)
            .Where(m => new[] { m.Line, m.Other }.All(n => j.Lines.Any(l => l.Line == n && l.Coupling is not null))).Select(m => (m.Line, m.Other)))
        .Distinct();

    /// <summary>The gravest first, then along the train.</summary>
    public ImmutableArray<TrainFinding> Findings { get; init; } = [];

    /// <summary>The gravest of its findings.</summary>
    public FindingWeight Verdict => Findings.IsEmpty ? FindingWeight.Mind : Findings.Max(f => f.Weight);
}
