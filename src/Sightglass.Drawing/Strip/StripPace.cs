namespace Sightglass.Drawing.Strip;

/// <summary>Walking seconds between two stops, written above the tape at X.</summary>
public sealed record StripPace(double X, double Seconds);
