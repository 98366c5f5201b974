namespace Sightglass.Bench;

/// <param name="Seconds">Per scenario.</param>
/// <param name="SecondsPerIteration">Per iteration of eight lanes, scalar work of the run included.</param>
/// <param name="Bytes">Allocated per scenario, by the run that drives the lanes as well.</param>
internal sealed record KernelTime(double Seconds, double SecondsPerIteration, double Bytes);
