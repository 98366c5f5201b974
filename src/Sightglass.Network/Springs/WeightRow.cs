namespace Sightglass.Network.Springs;

/// <summary>A force down at a point of a body, or moments.</summary>
/// <param name="Heave">N for each unit of the input.</param>
/// <param name="Pitch">N·m about the body's own y axis for each.</param>
/// <param name="Roll">The same about its x axis.</param>
internal readonly record struct WeightRow(int Body, int Input, double Heave, double Pitch, double Roll);
