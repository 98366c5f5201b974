namespace Sightglass.Drawing.Charts;

/// <summary>One case on a map.</summary>
/// <param name="Mechanism">How it failed, counted from 0; null where it ended well.</param>
/// <param name="Stopped">Whether it stopped safely instead of ending well.</param>
public readonly record struct MapPoint(double X, double Y, int? Mechanism = null, bool Stopped = false);
