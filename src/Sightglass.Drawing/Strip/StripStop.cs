using Sightglass.Basics.Language;
using Sightglass.Drawing.Labels;
using Sightglass.Drawing.Shapes;
using Sightglass.Drawing.Walk;

namespace Sightglass.Drawing.Strip;

/// <summary>A place on the strip.</summary>
/// <param name="Stop">Place, side, order.</param>
/// <param name="X">Pixel of the stop.</param>
/// <param name="Y">On the tape for ground places, at the floor for places inside.</param>
/// <param name="Flag">Its name below the tape; null for places inside.</param>
/// <param name="Label">Box of the name, pixels; null for places inside and where no tape is drawn.</param>
public sealed record StripStop(WalkStop Stop, double X, double Y, bool IsCurrent, bool IsVisited, FlagPlace? Flag, Bounds? Label)
{
    public string Name => Stop.Place.Name;

    /// <summary>Its name in the language that is spoken.</summary>
    public string Said => Say.Book(Name);
}
