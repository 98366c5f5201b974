using Sightglass.Book.Model;
using Sightglass.Drawing.Shapes;

namespace Sightglass.Drawing.Strip;

/// <summary>An item on the strip: its mark and, where it has one, its flag.</summary>
/// <param name="Medium">fuel, main, brake, power, control, water, or empty.</param>
/// <param name="X">Pixel of the mark.</param>
/// <param name="Y">Pixel of the mark.</param>
public sealed record StripItem(Item Item, Side Side, string Medium, double X, double Y, bool IsSelected, bool IsHere, StripFlag? Flag);
