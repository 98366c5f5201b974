using Sightglass.Book.Model;
using Sightglass.Drawing.Shapes;

namespace Sightglass.Drawing.Strip;

/// <summary>Ground that a hazard covers, pixels, y downwards.</summary>
public sealed record StripZone(Hazard Hazard, Side Side, Bounds Box);
