namespace Sightglass.Bench;

/// <param name="Seconds">Median time of one scenario.</param>
/// <param name="Steps">Steps of all repetitions' last run.</param>
/// <param name="Firings">When switches fired, s (the first 24).</param>
internal sealed record BaselineResult(double Seconds, long Steps, double[] Firings);
