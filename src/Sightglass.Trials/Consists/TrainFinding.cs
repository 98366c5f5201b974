namespace Sightglass.Trials.Consists;

/// <summary>One thing that a check of a train has found.</summary>
/// <param name="Weight">How much it weighs.</param>
/// <param name="Vehicle">The place in the train of the vehicle it is about; null for the train.</param>
/// <param name="Says">What it is and why, in whole sentences, in the language that is spoken when it is asked.</param>
public sealed record TrainFinding(FindingWeight Weight, int? Vehicle, Func<string> Says);
