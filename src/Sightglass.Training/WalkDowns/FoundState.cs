namespace Sightglass.Training.WalkDowns;

/// <summary>What became of an item that a walk-down looked for.</summary>
public enum FoundState
{
    Seen,
    NotSeen,
    Differs,
}
