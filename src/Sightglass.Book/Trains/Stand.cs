using Sightglass.Book.Model;

namespace Sightglass.Book.Trains;

/// <summary>Where a vehicle of a train stands: its class's axes turned and moved into those of the machine that the book is about.</summary>
/// <param name="Vehicle">How its parts are called.</param>
/// <param name="Class">Its book.</param>
/// <param name="Listed">As the train lists it.</param>
/// <param name="Offset">x of its origin.</param>
/// <param name="IsTurned">Whether its front faces the rear of the machine.</param>
internal sealed record Stand(Vehicle Vehicle, ClassBook Class, TrainVehicle Listed, double Offset, bool IsTurned)
{
    public double First => IsTurned ? Offset - Class.Length : Offset;

    public double Last => First + Class.Length;

    public Point3 Move(Point3 p) => new(MoveX(p.X), MoveY(p.Y), p.Z);

    public double MoveX(double x) => IsTurned ? Offset - x : Offset + x;

    public double MoveY(double y) => IsTurned ? -y : y;

    public Port Move(Port port) => port with { X = port.X is { } x ? MoveX(x) : null, Y = port.Y is { } y ? MoveY(y) : null };

    /// <summary>The end that faces a side of the machine, or null.</summary>
    public CouplingEnd? EndFacing(Side side)
    {
        bool wantsFront = (side == Side.Front) != IsTurned;
        return Class.Ends.Values.Where(e => e.Faces == (wantsFront ? Side.Front : Side.Rear)).OrderBy(e => e.Span).FirstOrDefault();
    }
}
