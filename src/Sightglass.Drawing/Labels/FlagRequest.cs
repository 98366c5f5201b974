namespace Sightglass.Drawing.Labels;

/// <summary>A label that wants a place: a pole and the width of its flag, in pixels.</summary>
/// <param name="X">Where the pole would like to stand.</param>
/// <param name="Width">Width of the flag.</param>
/// <param name="From">A flag that leaves the stretch between From and To is a last resort.</param>
/// <param name="To">See <paramref name="From"/>.</param>
public readonly record struct FlagRequest(double X, double Width, double From = double.NegativeInfinity, double To = double.PositiveInfinity);
