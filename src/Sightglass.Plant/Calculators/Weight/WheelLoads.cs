using System.Collections.Immutable;
using Sightglass.Network.Springs;

namespace Sightglass.Plant.Calculators.Weight;

/// <summary>
/// What the eight wheels of a locomotive on two trucks press on the rail: the body on four springs, each truck on four, each wheelset on two wheels, none of which can pull. Source: statics and linear
/// springs (<see cref="Suspension"/>). Lengths in m, x forward and y to the right of the middle; masses in kg, stiffnesses in N/m.
/// </summary>
public sealed record WheelLoads
{
    private const double Gravity = 9.80665;

    /// <summary>Of a wheel on its rail, N/m: so much stiffer than springs that it counts as rigid.</summary>
    private const double Rigid = 1e11;

    /// <summary>What the body carries, each with its place.</summary>
    public required ImmutableArray<(double Mass, double X, double Y)> Body { get; init; }

    /// <summary>Of each truck without its wheelsets.</summary>
    public required double Truck { get; init; }

    public required double Wheelset { get; init; }

    /// <summary>Between the middles of the trucks.</summary>
    public required double TruckDistance { get; init; }

    /// <summary>Between the axles of a truck.</summary>
    public required double AxleDistance { get; init; }

    /// <summary>Between the springs of the two sides.</summary>
    public required double SpringBase { get; init; }

    /// <summary>Between the points at which the two wheels of an axle stand on the rails.</summary>
    public required double WheelBase { get; init; }

    /// <summary>Of each of the four springs below the body.</summary>
    public required double BodySpring { get; init; }

    /// <summary>Of each of the eight springs over the axles.</summary>
    public required double AxleSpring { get; init; }

    /// <summary>Which axle spring is not whole: 0 to 7, axle by axle from the front, the right one first; below 0 for none.</summary>
    public int Broken { get; init; } = -1;

    /// <summary>Share of its stiffness that it still has.</summary>
    public double Left { get; init; } = 1;

    /// <summary>N·m by which a pull at a height presses the rear down.</summary>
    public double Pull { get; init; }

    /// <summary>N at each wheel, axle by axle from the front, the right one first; null where something does not stand.</summary>
    public ImmutableArray<double>? Newtons()
    {
        SuspensionBuilder b = new();
        Network.Springs.Body body = b.AddBody("body", 0, 0);
        foreach ((double mass, double x, double y) in Body)
        {
            b.AddWeight(body, x, y, b.AddInput("load", mass * Gravity));
        }

        b.AddPitch(body, b.AddInput("pull", -Pull));
        List<Spring> wheels = [];
        foreach (double middle in new[] { TruckDistance / 2, -TruckDistance / 2 })
        {
            Network.Springs.Body truck = b.AddBody("truck", middle, 0);
            b.AddWeight(truck, middle, 0, b.AddInput("truck", Truck * Gravity));
            AddPair(b, body, truck, middle);
            wheels.AddRange(AddAxle(b, truck, middle + (AxleDistance / 2), wheels.Count));
            wheels.AddRange(AddAxle(b, truck, middle - (AxleDistance / 2), wheels.Count));
        }

        Suspension whole = b.Build();
        SuspensionState state = whole.NewState();
        whole.Solve(whole.NewInputs(), state);
        return state.Outcome == StandOutcome.Stands ? [.. wheels.Select(state.Force)] : null;
    }

    private void AddPair(SuspensionBuilder b, Network.Springs.Body upper, Network.Springs.Body lower, double x)
    {
        b.AddSpring("right", upper, lower, x, SpringBase / 2, BodySpring);
        b.AddSpring("left", upper, lower, x, -SpringBase / 2, BodySpring);
    }

    private IEnumerable<Spring> AddAxle(SuspensionBuilder b, Network.Springs.Body truck, double x, int first)
    {
        Network.Springs.Body wheelset = b.AddBody("wheelset", x, 0, Freedoms.Heave | Freedoms.Roll);
        b.AddWeight(wheelset, x, 0, b.AddInput("wheelset", Wheelset * Gravity));
        foreach ((int side, int at) in new[] { (1, first), (-1, first + 1) })
        {
            b.AddSpring("axle spring", truck, wheelset, x, side * SpringBase / 2, AxleSpring, factor: b.AddInput("left of it", at == Broken ? Left : 1));
            yield return b.AddSpring("wheel", wheelset, null, x, side * WheelBase / 2, Rigid);
        }
    }
}
