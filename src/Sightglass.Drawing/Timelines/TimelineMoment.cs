namespace Sightglass.Drawing.Timelines;

/// <summary>A moment that concerns every lane.</summary>
/// <param name="At">Seconds.</param>
/// <param name="Words">Few, at the top of its line where there is room.</param>
/// <param name="IsBroken">What decided it to the bad.</param>
/// <param name="IsTruth">Known to the instructor alone.</param>
public sealed record TimelineMoment(double At, string Words, bool IsBroken = false, bool IsTruth = false);
