using Sightglass.Basics.Time;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;

namespace Sightglass.World.Tests.Trade;

/// <summary>What leaves one store enters another: liquid and air close to 1e-12 of what passed, whatever is done to the valves (kernel's contract).</summary>
public sealed class ConservationTests(ITestOutputHelper output)
{
    private const double TenHours = 36000;

    /// <summary>The pump alone passes 15 L/min × 10 h × 0.84 kg/L = 7,560 kg; what crosses between compartments comes on top and is left out.</summary>
    [Fact]
    public void Mass_DemoBookTenHoursEveryValveAtRandom_Closes()
    {
        using Rig rig = new(Books.Curlew, "leaking compartment", 3);
        Assert.True(Drift(rig, 11) < 7560e-12);
    }

    /// <summary>A drum lying on a grade of 3 % and two boxes, joined; 9 L/min × 10 h × 0.84 kg/L = 4,536 kg.</summary>
    [Fact]
    public void Mass_LyingCylinderOnAGradeTenHoursEveryValveAtRandom_Closes()
    {
        const string Situation = """
              on the grade:
                start: { fill of compartment A: 60 %, fill of compartment B: 40 %, fill of compartment C: 50 %, grade: 3 %, cant: 1 % }
            """;
        using Rig rig = new(TradeMachine.PlanWithDrum(Situation), "on the grade");
        Assert.True(Drift(rig, 12) < 4536e-12);
    }

    /// <summary>Every minute one control, drawn with its position, is worked; in the end what is in all stores and boundaries is what it was: kilograms of liquid and of compressed air; joules of heat and coulombs are looked at for themselves.</summary>
    private double Drift(Rig rig, int seed)
    {
        Random chance = new(seed);
        Item[] controls = [.. rig.Plan.Book.Items.Values.Where(i => rig.Plan.Items.TryGetValue(i.Name, out ItemPlan? p) && p.Position is not null && i.Positions.Length > 1)];
        Assert.True(controls.Length >= 8);
        for (double at = 30; at < TenHours; at += 60)
        {
            Item item = controls[chance.Next(controls.Length)];
            rig.Do(at + chance.NextDouble(), item.Name, item.Positions[chance.Next(item.Positions.Length)]);
        }

        int[] others = [.. Networks(rig).Where(n => rig.Plan.AmountNames[n].Any(a => a.StartsWith("plates of ", StringComparison.Ordinal) || (rig.Plan.Book.Items.TryGetValue(a, out Item? i) && i.Kind.Name == "thermal mass")))];
        double before = Mass(rig, others);
        double[] were = [.. others.Select(n => Masses.Of(rig.World, n).Sum)];
        rig.World.RunTo(SimTime.FromSeconds(TenHours));
        Assert.True(rig.World.Trouble is null, rig.World.Trouble);
        rig.World.CutHere();
        double drift = Math.Abs(Mass(rig, others) - before);
        for (int i = 0; i < others.Length; i++)
        {
            (double sum, double size) = Masses.Of(rig.World, others[i]);
            Assert.True(Math.Abs(sum - were[i]) <= 1e-12 * size, $"{sum - were[i]} of {size} J or C in network {others[i]}");
        }

        output.WriteLine($"{before} kg, drift {drift} kg, {rig.World.Steps} steps, {controls.Length} controls");
        return drift;
    }

    private static IEnumerable<int> Networks(Rig rig) => Enumerable.Range(0, rig.Plan.AmountNames.Length);

    private static double Mass(Rig rig, int[] without) => Networks(rig).Except(without).Sum(n => Masses.Of(rig.World, n).Sum);
}
