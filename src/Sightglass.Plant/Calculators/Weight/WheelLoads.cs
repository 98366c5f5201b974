using System.Collections.Immutable;
using Sightglass.Network.Springs;

namespace Sightglass.Plant.Calculators.Weight;

/// <summary>
/// What the eight wheels of a locomotive on two trucks press on the rail: the body on four springs, each truck on four and, where one of them gives way, on a stop; each wheelset on two wheels. None of them can pull. Source: statics and linear
/// springs (<see cref="Suspension"/>). Lengths in m, x forward and y to the right of the middle; masses in kg, stiffnesses in N/m.
/// </summary>
public sealed record WheelLoads
{
    private const double Gravity = 9.80665;

    /// <summary>Of a wheel on its rail, N/m: so much stiffer than springs that it counts as rigid.</summary>
    private const double Rigid = 1e11;

    /// <summary>Of a frame on its stop, N/m: steel on steel.</summary>
    private const double StopStiffness = 1e9;

    private const int Wheels = 8;

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

    /// <summary>m by which a frame can go down over an axle before it rests on its stop, from where it stands with all springs whole.</summary>
    public double Clearance { get; init; } = double.PositiveInfinity;

    /// <summary>What stands on the rails; null where something does not stand.</summary>
    public WheelForces? Solve()
    {
        double[] free = [.. Enumerable.Repeat(double.PositiveInfinity, Wheels)];
        if (Broken < 0 || Left >= 1)
        {
            return Of(free, whole: true)?.Forces;
        }

        return Of(free, whole: true) is { } before ? Of([.. before.Ways.Select(w => w + Clearance)], whole: false)?.Forces : null;
    }

    /// <param name="stops">m of way of each axle spring at which the frame rests on its stop; endless where there is none.</param>
    private (WheelForces Forces, double[] Ways)? Of(double[] stops, bool whole)
    {
        SuspensionBuilder b = new();
        Network.Springs.Body body = b.AddBody("body", 0, 0);
        foreach ((double mass, double x, double y) in Body)
        {
            b.AddWeight(body, x, y, b.AddInput("load", mass * Gravity));
        }

        b.AddPitch(body, b.AddInput("pull", -Pull));
        List<WheelPlace> wheels = [];
        foreach (double middle in new[] { TruckDistance / 2, -TruckDistance / 2 })
        {
            Network.Springs.Body truck = b.AddBody("truck", middle, 0);
            b.AddWeight(truck, middle, 0, b.AddInput("truck", Truck * Gravity));
            b.AddSpring("right", body, truck, middle, SpringBase / 2, BodySpring);
            b.AddSpring("left", body, truck, middle, -SpringBase / 2, BodySpring);
            AddAxle(b, truck, middle + (AxleDistance / 2), stops, whole, wheels);
            AddAxle(b, truck, middle - (AxleDistance / 2), stops, whole, wheels);
        }

        Suspension all = b.Build();
        SuspensionState state = all.NewState();
        all.Solve(all.NewInputs(), state);
        return state.Outcome == StandOutcome.Stands
            ? (new([.. wheels.Select(w => state.Force(w.Wheel))], wheels.Max(w => w.Stop is { } stop ? state.Force(stop) : 0)), [.. wheels.Select(w => state.Force(w.Spring) / AxleSpring)])
            : null;
    }

    private void AddAxle(SuspensionBuilder b, Network.Springs.Body truck, double x, double[] stops, bool whole, List<WheelPlace> wheels)
    {
        Network.Springs.Body wheelset = b.AddBody("wheelset", x, 0, Freedoms.Heave | Freedoms.Roll);
        b.AddWeight(wheelset, x, 0, b.AddInput("wheelset", Wheelset * Gravity));
        foreach (int side in new[] { 1, -1 })
        {
            int at = wheels.Count;
            double y = side * SpringBase / 2;
            Spring spring = b.AddSpring("axle spring", truck, wheelset, x, y, AxleSpring, factor: b.AddInput("left of it", whole || at != Broken ? 1 : Left));
            Spring? stop = double.IsFinite(stops[at]) ? b.AddSpring("stop", truck, wheelset, x, y, StopStiffness, gap: b.AddInput("to the stop", stops[at])) : null;
            wheels.Add(new(b.AddSpring("wheel", wheelset, null, x, side * WheelBase / 2, Rigid), spring, stop));
        }
    }

    private readonly record struct WheelPlace(Spring Wheel, Spring Spring, Spring? Stop);
}
