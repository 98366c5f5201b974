using System.Collections.Immutable;

namespace Sightglass.Training.Drills;

/// <summary>Whether a drill can be used.</summary>
/// <param name="Cases">How many were run.</param>
/// <param name="Idle">Cases that are passed although nobody does anything.</param>
/// <param name="Solutions">What each of its cards came to.</param>
/// <param name="Unsolved">Cases that no card passes.</param>
/// <param name="Shortcuts">Steps without which its cards pass in as many cases: the drill does not notice them.</param>
public sealed record DrillCheckResult(int Cases, ImmutableArray<int> Idle, ImmutableArray<DrillSolution> Solutions, ImmutableArray<int> Unsolved, ImmutableArray<DrillShortcut> Shortcuts)
{
    public bool IsGood => Idle.IsEmpty && Unsolved.IsEmpty && !Solutions.IsEmpty;
}
