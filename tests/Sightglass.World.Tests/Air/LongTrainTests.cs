using Sightglass.Basics.Time;
using Sightglass.Plant.Plans;
using Sightglass.Tests.Support;
using Sightglass.World.Snapshots;
using Sightglass.World.Tests.Trade;

namespace Sightglass.World.Tests.Air;

/// <summary>A train whose cars have more switches than a machine word has bits: two for each control valve of direct release.</summary>
public sealed class LongTrainTests
{
    private const double Psi = 6894.757293;
    private const int Cars = 99;
    private const double Until = 26;

    /// <summary>
    /// The first of 99 cars sets its brake and lets it go again before the last one feels much; kept as text in between and taken up in other memory, the run ends with the same
    /// hash after the same steps (common practice, no source).
    /// </summary>
    [Fact]
    public void Restore_HundredVehiclesOfDirectRelease_SetAndLetGoWithTheSameHash()
    {
        Plan plan = Rig.Compile(TrainText.Book(Cars));
        Assert.True(plan.Switches.Length >= 2 * Cars, $"{plan.Switches.Length} switches");
        using Rig rig = new(plan, "charged");
        rig.Do(1, "brake handle of head", "full service");
        Assert.True(rig.At(15, "pressure of cylinder of car 1") > 20 * Psi);
        rig.Do(16, "brake handle of head", "release");
        rig.At(18, "pressure of brake pipe of head");
        string kept = rig.World.Save().ToJson();
        Assert.True(rig.At(Until, "pressure of cylinder of car 1") < 20 * Psi);
        Assert.True(rig.At(Until, $"pressure of brake pipe of car {Cars}") < 110 * Psi);

        using LaneBank memory = new(plan);
        World again = new(memory, 5);
        again.Restore(WorldSnapshot.FromJson(kept));
        again.RunTo(SimTime.FromSeconds(Until));
        Assert.Equal(rig.World.Hash, again.Hash);
        Assert.Equal(rig.World.Steps, again.Steps);
    }
}
