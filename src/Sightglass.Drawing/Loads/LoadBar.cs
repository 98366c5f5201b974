using Sightglass.Drawing.Shapes;

namespace Sightglass.Drawing.Loads;

/// <summary>The load of one wheel as a bar that grows away from the machine. Pixels, y downwards.</summary>
/// <param name="Wheel">Whose.</param>
/// <param name="Tread">The wheel as seen from above.</param>
/// <param name="Room">How far the bar could grow.</param>
/// <param name="Known">What is drawn: the bar up to what is known of it; null for nothing known.</param>
/// <param name="IsRead">A scale shows it, besides the truth.</param>
/// <param name="Load">kg that are known.</param>
/// <param name="Real">Where the truth lies, if it is shown beside a reading that says something else.</param>
/// <param name="Limit">From edge to edge across the bar, where it may end; null where the book says nothing.</param>
/// <param name="Over">kg over what it may carry; nothing or less within.</param>
/// <param name="Number">Where its number stands, in the middle of its base line.</param>
/// <param name="Text">That number with its unit.</param>
public sealed record LoadBar(
    LoadWheel Wheel, Bounds Tread, Bounds Room, Bounds? Known, bool IsRead, double Load, (double X, double Y)? Real, (double FromX, double FromY, double ToX, double ToY)? Limit, double Over, Bounds Number, string Text);
