namespace Sightglass.Drawing.Lanes;

/// <summary>Something that lasts.</summary>
/// <param name="From">Seconds.</param>
/// <param name="To">Seconds.</param>
/// <param name="Words">What; written into the bar where there is room.</param>
/// <param name="Sort">How it is drawn.</param>
public sealed record LaneBar(double From, double To, string Words, LaneBarSort Sort = LaneBarSort.Box);
