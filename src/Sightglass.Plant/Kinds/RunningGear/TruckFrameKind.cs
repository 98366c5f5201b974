using Sightglass.Book.Kinds;

namespace Sightglass.Plant.Kinds.RunningGear;

/// <summary>The frame of a truck between its two stages of springs.</summary>
public sealed class TruckFrameKind : CarriedKind
{
    public override KindSheet Sheet { get; } = Carried(
        "truck frame",
        "The frame of a truck: carries the body on springs and rests on springs over its axles, or on equalisers.",
        "Rigid, like a body. It turns freely under the body; only weight goes through its springs. Source: statics.");
}
