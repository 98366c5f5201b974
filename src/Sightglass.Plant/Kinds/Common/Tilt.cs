using Sightglass.Book.Model;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Kinds.Common;

/// <summary>How far a point is lifted by grade (front uphill positive) and cant (right side high positive).</summary>
internal sealed class Tilt
{
    private readonly Slot _grade;
    private readonly Slot _cant;

    public Tilt(PlanBuilder plan)
    {
        _grade = plan.SlotNamed("grade");
        _cant = plan.SlotNamed("cant");
    }

    public Slot Grade => _grade;

    public Slot Cant => _cant;

    /// <summary>Metres by which a point stands above its place on level track, for a machine turned about its own origin.</summary>
    public double Lift(ReadOnlySpan<double> slots, double x, double y) => (slots[_cant.Index] * y) - (slots[_grade.Index] * x);

    /// <summary>Steepness of both together, tanθ.</summary>
    public double Steepness(ReadOnlySpan<double> slots) => Math.Sqrt((slots[_grade.Index] * slots[_grade.Index]) + (slots[_cant.Index] * slots[_cant.Index]));

    /// <summary>Half of what a floor rises from its lowest to its highest corner, m.</summary>
    public double HalfRise(ReadOnlySpan<double> slots, double length, double width) =>
        ((Math.Abs(slots[_grade.Index]) * length) + (Math.Abs(slots[_cant.Index]) * width)) / 2;

    public static Point3 PlaceOf(StoreEnd end) => end.Port is { } port && end.Item?.Position is { } tank
        ? new(port.X ?? tank.X, port.Y ?? tank.Y, tank.Z + port.Height)
        : end.Item?.Position ?? new(0, 0, end.Elevation);
}
