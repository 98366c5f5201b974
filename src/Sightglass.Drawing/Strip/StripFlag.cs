using Sightglass.Drawing.Labels;
using Sightglass.Drawing.Shapes;

namespace Sightglass.Drawing.Strip;

/// <summary>A label on its pole.</summary>
/// <param name="Up">Above the machine, or below the rail.</param>
/// <param name="Box">The label's box, pixels, y downwards (Low is the upper edge).</param>
/// <param name="Bend">Where the pole leaves the machine: from here it goes to <see cref="FlagPlace.Pole"/> when poles were too close.</param>
public sealed record StripFlag(string Text, FlagPlace Place, bool Up, Bounds Box, double Bend);
