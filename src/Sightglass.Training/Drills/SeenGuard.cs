namespace Sightglass.Training.Drills;

/// <summary>A lock, a chock or a signal that stands where somebody is.</summary>
/// <param name="Protection">Which.</param>
/// <param name="Target">The item or place that it is at.</param>
/// <param name="IsOwn">Whether they set it themselves.</param>
public sealed record SeenGuard(string Protection, string Target, bool IsOwn);
