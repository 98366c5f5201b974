using Sightglass.Basics.Time;
using Sightglass.Network.Compile;
using Sightglass.Network.Groups;
using Sightglass.Network.Laws.Liquid;

namespace Sightglass.Network.Tests.Groups;

/// <summary>A tank of 1.5 m² with 1.2 m of water and a hole of 25 mm (Cd 0.62) at its foot, opening as input.</summary>
internal sealed class Rig
{
    public const double Density = 1000;
    public const double Area = 1.5;
    public const double HoleArea = Math.PI * 0.025 * 0.025 / 4;

    public Rig(double epsilon = 1e-4)
    {
        NetworkBuilder b = new();
        Tank = b.AddStore<UprightTank>("tank", [101325, Area], [Density * Area * 1.2], [Density * 9.80665 * 1.2]).First;
        Outside = b.AddBoundary<Still>("outside", [101325]).First;
        Opening = b.AddInput(1);
        Hole = b.AddPath<LiquidOrifice>("hole", [Tank, Outside], [new(Tank, Outside)], [0.62 * HoleArea * Math.Sqrt(2 * Density), epsilon, 0], [Opening]);
        Topology = b.Build();
    }

    public Amount Tank { get; }

    public Amount Outside { get; }

    public Input Opening { get; }

    public PathHandle Hole { get; }

    public Topology Topology { get; }

    /// <summary>Runs one lane to a moment by proposals and one cut.</summary>
    public static void RunTo(LaneGroup group, int lane, SimTime until)
    {
        while (group.Time(lane) < until)
        {
            if (group.PendingEnd(lane) == SimTime.Never)
            {
                group.Propose(lane);
                Finish(group);
            }

            if (group.PendingEnd(lane) <= until)
            {
                group.Commit(lane);
            }
            else
            {
                group.Cut(lane, until);
                Finish(group);
            }
        }
    }

    public static void Finish(LaneGroup group)
    {
        while (group.Iterate() > 0)
        {
        }
    }
}
