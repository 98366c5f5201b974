namespace Sightglass.Drawing.Timelines;

/// <summary>Something that lasts.</summary>
/// <param name="From">Seconds.</param>
/// <param name="To">Seconds.</param>
/// <param name="Words">What; written into the bar where there is room.</param>
/// <param name="Sort">How it is drawn.</param>
public sealed record TimelineBar(double From, double To, string Words, TimelineBarSort Sort = TimelineBarSort.Box);
