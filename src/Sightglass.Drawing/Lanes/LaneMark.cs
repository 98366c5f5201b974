namespace Sightglass.Drawing.Lanes;

/// <summary>An act.</summary>
/// <param name="At">Seconds.</param>
/// <param name="Shape">What sort of act.</param>
/// <param name="Words">What it was.</param>
public sealed record LaneMark(double At, LaneMarkShape Shape, string Words);
