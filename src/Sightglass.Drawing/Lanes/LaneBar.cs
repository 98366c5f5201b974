namespace Sightglass.Drawing.Lanes;

/// <summary>A stay.</summary>
/// <param name="From">Seconds.</param>
/// <param name="To">Seconds.</param>
/// <param name="Words">What is written in it, as far as it has room.</param>
/// <param name="IsHere">Whether it is where they are now.</param>
public sealed record LaneBar(double From, double To, string Words, bool IsHere);
