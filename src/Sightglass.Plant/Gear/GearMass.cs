using Sightglass.Book.Model;
using Body = Sightglass.Network.Springs.Body;

namespace Sightglass.Plant.Gear;

/// <summary>Something that has weight and moves as one piece: a body, a truck frame, an equaliser, an axle.</summary>
/// <param name="Below">What its springs stand on.</param>
internal sealed record GearMass(Item Item, Body Body, List<GearMass> Below)
{
    /// <summary>m, of its middle along the train.</summary>
    public double X => Item.Position?.X ?? 0;

    /// <summary>m to the right of the train's middle.</summary>
    public double Y => Item.Position?.Y ?? 0;

    /// <summary>1; −1 where its vehicle is turned, so that its own rear and right lie the other way.</summary>
    public double Way => Item.Vehicle.IsTurned ? -1 : 1;
}
