namespace Sightglass.Training.Lessons;

/// <summary>How deep a lesson goes; each depth says what those before it say.</summary>
public enum Depth
{
    /// <summary>What it is for, what normal looks like, what to know.</summary>
    Know,

    /// <summary>How to operate it.</summary>
    Operate,

    /// <summary>How to repair it.</summary>
    Repair,
}
