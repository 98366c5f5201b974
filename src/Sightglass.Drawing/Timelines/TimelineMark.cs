namespace Sightglass.Drawing.Timelines;

/// <summary>Something that happens.</summary>
/// <param name="At">Seconds.</param>
/// <param name="Sort">How it is drawn.</param>
/// <param name="Words">What, for a pointer that rests on it.</param>
/// <param name="Label">Few words beside it where there is room; empty for none.</param>
public sealed record TimelineMark(double At, TimelineMarkSort Sort, string Words, string Label = "");
