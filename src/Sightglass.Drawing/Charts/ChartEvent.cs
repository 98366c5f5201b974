namespace Sightglass.Drawing.Charts;

/// <summary>Something that happened: a tick on the axis of a time chart.</summary>
/// <param name="X">When.</param>
/// <param name="Words">Said to a pointer or a reader.</param>
/// <param name="IsTruth">Known to the instructor alone.</param>
public sealed record ChartEvent(double X, string Words, bool IsTruth = false);
