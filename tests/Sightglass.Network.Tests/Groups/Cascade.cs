using Sightglass.Network.Compile;
using Sightglass.Network.Groups;
using Sightglass.Network.Stores;

namespace Sightglass.Network.Tests.Groups;

/// <summary>
/// 1 kg in a first store runs into a second and out of that, each in proportion to what is there: the second fills, turns and empties. Its contents are
/// a/(b−a)·(e^−at − e^−bt), greatest at ln(a/b)/(a−b) (Bateman 1910, two members; from memory).
/// </summary>
internal sealed class Cascade
{
    private readonly double _a;
    private readonly double _b;

    public Cascade(double a, double b)
    {
        (_a, _b) = (a, b);
        NetworkBuilder builder = new();
        Amount first = builder.AddStore<LinearStore>("first", LinearStore.ParametersOf(0, 0, 1), [1], [1]).First;
        Second = builder.AddStore<LinearStore>("second", LinearStore.ParametersOf(0, 0, 1), [0], [1]).First;
        Amount outside = builder.AddBoundary<Still>("outside", [0]).First;
        builder.AddPath<DrainLaw>("over", [first, Second], [new(first, Second)], [a], []);
        builder.AddPath<DrainLaw>("out", [Second, outside], [new(Second, outside)], [b], []);
        Topology = builder.Build();
    }

    public Amount Second { get; }

    public Topology Topology { get; }

    public double PeakTime => Math.Log(_a / _b) / (_a - _b);

    public double Peak => At(PeakTime);

    public double At(double seconds) => _a / (_b - _a) * (Math.Exp(-_a * seconds) - Math.Exp(-_b * seconds));

    /// <summary>Runs to a time with a switch on the second store's contents.</summary>
    /// <returns>When the switch fired first, s, or null; and the steps taken.</returns>
    public (double? Fired, long Steps) Watch(double level, double relativeTolerance, double until)
    {
        using LaneGroup group = new(Topology, relativeTolerance);
        group.Arm(0, group.AddGuard(new LevelGuard(Second, level, 1)), true);
        while (group.Time(0).Seconds < until)
        {
            group.Propose(0);
            Rig.Finish(group);
            group.Commit(0);
            if (group.HasFired(0))
            {
                return (group.Time(0).Seconds, group.Steps(0));
            }
        }

        return (null, group.Steps(0));
    }
}
