using System.Collections.Immutable;
using Sightglass.Book.Model;
using Sightglass.Drawing.Shapes;

namespace Sightglass.Drawing.Strip;

/// <summary>Ground that hazards of one signal word cover, pixels, y downwards.</summary>
public sealed record StripZone(ImmutableArray<Hazard> Hazards, Side Side, Bounds Box)
{
    public SignalWord Word => Hazards[0].Caution.Word;
}
