namespace Sightglass.World.Snapshots;

/// <summary>How questions are answered, and how many were put.</summary>
public sealed record AnswersSnapshot(double From, double To, double Unanswered, ulong Seed, ulong Case, int Asked);
