namespace Sightglass.Training.Drills;

/// <summary>What a card came to in a drill.</summary>
/// <param name="Card">Its title.</param>
/// <param name="Passed">Cases that it passes.</param>
public sealed record DrillSolution(string Card, int Passed);
