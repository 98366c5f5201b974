namespace Sightglass.Drawing.Lanes;

/// <summary>Something that came about at a moment.</summary>
/// <param name="At">Seconds.</param>
/// <param name="Words">Written beside it where there is room.</param>
/// <param name="IsTruth">Whether nobody in the drill can know it.</param>
public sealed record LaneEvent(double At, string Words, bool IsTruth);
