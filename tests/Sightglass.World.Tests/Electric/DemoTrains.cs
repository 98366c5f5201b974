using System.Collections.Concurrent;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Time;
using Sightglass.Plant.Plans;
using Sightglass.World.Tests.Trade;

namespace Sightglass.World.Tests.Electric;

/// <summary>The demo's trains, compiled once.</summary>
internal static class DemoTrains
{
    private const double MilePerHour = 0.44704;

    private static readonly ConcurrentDictionary<string, Plan> s_plans = new(StringComparer.Ordinal);

    /// <summary>At the start of one of the demo's situations, which says the train.</summary>
    public static Rig At(string situation) => new(s_plans.GetOrAdd(Books.Curlew.Book.Situations[situation].Train!, Compile), situation);

    /// <summary>Whether a condition, a fact or a sign of the train holds at a moment.</summary>
    public static bool Holds(this Rig rig, double at, string condition) => rig.At(at, w => w.Value(rig.Plan.FindSignal(condition) ?? rig.Plan.Facts.GetValueOrDefault(condition) ?? rig.Plan.Signs[condition])) >= 0;

    /// <summary>Says how fast the train goes.</summary>
    public static void Goes(this Rig rig, double at, double milesPerHour) => rig.World.Do(new WorldAction.SetInput("speed", milesPerHour * MilePerHour), SimTime.FromSeconds(at));

    private static Plan Compile(string train)
    {
        DiagnosticList found = new();
        Plan? plan = PlanCompiler.Compile(Books.Curlew.Book.Coupled(train), found);
        Assert.True(plan is not null, string.Join('\n', found));
        return plan;
    }
}
