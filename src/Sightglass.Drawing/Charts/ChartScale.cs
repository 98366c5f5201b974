namespace Sightglass.Drawing.Charts;

/// <summary>From values to pixels: a stretch of x and y in a frame.</summary>
/// <param name="Left">Frame, pixels.</param>
/// <param name="Right">Frame, pixels.</param>
/// <param name="High">Upper edge of the frame, pixels.</param>
/// <param name="Low">Lower edge of the frame, pixels.</param>
internal readonly record struct ChartScale(double X0, double X1, double Y0, double Y1, double Left, double Right, double High, double Low)
{
    public double X(double value) => Left + ((Right - Left) * (value - X0) / (X1 - X0));

    /// <summary>Clamped to a little outside of the frame, so that nothing runs off.</summary>
    public double Y(double value) => Math.Clamp(Low - ((Low - High) * (value - Y0) / (Y1 - Y0)), High - 4, Low + 4);
}
