using Sightglass.Book.Model;

namespace Sightglass.Trials.Consists;

/// <summary>A brake cylinder in release and with the brakes of the train set in full.</summary>
/// <param name="Cylinder">The item.</param>
/// <param name="Released">Whether it pressed nothing in release.</param>
/// <param name="Set">Whether it presses with the brakes set.</param>
/// <param name="Newtons">With which it then holds its wheels back, at the rail.</param>
public sealed record CylinderReading(Item Cylinder, bool Released, bool Set, double Newtons)
{
    public bool Works => Released && Set;
}
