using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Time;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;
using Sightglass.World.Journal;
using Sightglass.World.Situations;

namespace Sightglass.World.Tests.Trade;

/// <summary>
/// On every system of the demo: a card knows what is shown, never what is true (the design's third idea; common practice, no source). The same case is worked twice, once with something wrong besides; until the first second
/// in which an instrument, a lamp or a sign anywhere differs, the same is done at the same moments.
/// </summary>
public sealed class DemoTwinTests(ITestOutputHelper output)
{
    private const double Every = 1;

    [Theory]
    [InlineData("Brake test before departure", "before departure", "control valve of car 3", "slow to release")]
    [InlineData("The engine runs hot", "hot engine after a grade", "fan thermostat 3", "stuck")]
    [InlineData("An axle box is warm", "stopped for a warm axle box", "third axle friction", "too strong")]
    [InlineData("The machine does not load", "load lamp that stays dark", "ground relay", "open coil")]
    [InlineData("Test the cab signals before departure", "cab signals before departure", "code 180 relay", "stuck")]
    [InlineData("Put head-end power on", "train without head-end power", "head-end contactor", "open coil")]
    [InlineData("Self-load test at a stand", "before a load test", "grid blower", "slow")]
    public void Card_EqualDisplaysDifferentTruth_SameDeedsUntilADisplayDiffers(string card, string situation, string item, string fault)
    {
        Plan plan = Books.CurlewFleet.For(null, Books.Curlew.Book.Situations[situation].Train)!;
        (JournalEntry[] deeds, double[][] shown) = Worked(plan, card, situation, null, null);
        (JournalEntry[] others, double[][] shownToo) = Worked(plan, card, situation, item, fault);
        int same = shown.Zip(shownToo).TakeWhile(p => p.First.AsSpan().SequenceEqual(p.Second)).Count();
        SimTime differs = SimTime.FromSeconds((same - 1) * Every);
        JournalEntry[] before = [.. deeds.Where(j => j.Time < differs)], beforeToo = [.. others.Where(j => j.Time < differs)];
        output.WriteLine($"{card}: {before.Length} deeds alike until {differs.Seconds} s of {shown.Length * Every} s");
        Assert.Equal(before.Select(j => j.Text), beforeToo.Select(j => j.Text));
        Assert.All(before.Zip(beforeToo), p => Assert.Equal(p.First.Time.Seconds, p.Second.Time.Seconds, 0.05));
        Assert.True(before.Length >= 2, "too little was done before");
        Assert.True(same < shown.Length || same < shownToo.Length || deeds.Length == others.Length, "nothing differed, and other things were done");
    }

    private static (JournalEntry[] Deeds, double[][] Shown) Worked(Plan plan, string card, string situation, string? item, string? fault)
    {
        using Rig rig = new(plan, situation);
        if (item is not null)
        {
            rig.Break(0, item, fault!);
        }

        Item[] instruments = [.. plan.Items.Values.Where(p => p.Shown is not null).Select(p => p.Item)];
        ItemPlan[] lamps = [.. plan.Items.Values.Where(p => p.Lit is not null)];
        List<double[]> shown = [];
        rig.World.OnSample = w =>
        {
            shown.Add([.. instruments.Select(i => w.Read(i)!.Value), .. lamps.Select(l => w.Value(l.Lit!) >= 0 ? 1.0 : 0), .. plan.Signs.Values.Select(s => w.Value(s) >= 0 ? 1.0 : 0)]);
            w.SampleAt(SimTime.FromSeconds(shown.Count * Every));
        };
        rig.World.SampleAt(SimTime.Zero);
        rig.World.Begin(Rig.RunOf(plan, card));
        rig.World.RunTo(SimTime.Never);
        return ([.. rig.World.Journal!.Where(j => j.Kind is JournalKind.Deed or JournalKind.Said or JournalKind.Finding)], [.. shown]);
    }
}
