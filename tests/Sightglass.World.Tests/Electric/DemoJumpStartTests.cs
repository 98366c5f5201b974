using Sightglass.World.Tests.Trade;

namespace Sightglass.World.Tests.Electric;

/// <summary>The demo's jump start from a shop battery. The book's numbers are invented; currents follow from Ohm's law.</summary>
public sealed class DemoJumpStartTests
{
    private const string Situation = "battery too low to start";

    /// <summary>An empty battery alone does not hold the starter; with the second one beside it the engine fires, and the two share the current as their resistances say.</summary>
    [Fact]
    public void RightWay_BothTogether_StartTheEngine()
    {
        using Rig rig = Start("right way");
        Assert.True(rig.Reads(70, "polarity meter") > 15);
        rig.Do(80, "shop battery switch", "closed");
        Assert.InRange(rig.Reads(100, "shop ammeter"), 10, 300);
        rig.Do(380, "fuel pump switch", "on");
        rig.Do(420, "engine start station", "start");
        double cranking = rig.At(422, "current of starter motors");
        Assert.InRange(cranking, 750, 1200);
        Assert.InRange(rig.At(423, "current of shop battery") / cranking, 0.35, 0.75);
        rig.Do(440, "engine start station", "off");
        Assert.True(rig.Holds(450, "running of engine"));
        Assert.False(rig.Holds(451, "tripped of booster cable fuse"));
        rig.Do(460, "shop battery switch", "open");
        rig.Do(520, "booster cables", "out");
        Assert.True(rig.Holds(530, "the shop battery is taken off"));
        Assert.True(rig.Reads(600, "battery ammeter") > 0);
    }

    /// <summary>Crossed, both batteries stand in a row over 30 + 25 mΩ of their own, 8 mΩ of cables, 2 mΩ of clamps and the contacts of switch and fuse: some 1800 A, and the fuse is gone within three seconds.</summary>
    [Fact]
    public void Crossed_SwitchClosed_GreatCurrentAndTheFuseOpens()
    {
        using Rig rig = Start("crossed");
        Assert.True(rig.Reads(70, "polarity meter") < -15);
        double both = rig.At(79, "electromotive force of shop battery") + rig.At(79.1, "electromotive force of battery boxes");
        rig.Do(80, "shop battery switch", "closed");
        double amperes = rig.At(80.2, "current of plus cable");
        Assert.InRange(both / amperes, 0.065, 0.090);
        Assert.True(amperes > 1400, $"{amperes} A");
        Assert.True(rig.Holds(80.3, "the booster cables are seen to smoke"));
        Assert.True(rig.Holds(80.4, "crossed cables carry current"));
        Assert.False(rig.Holds(80.5, "tripped of booster cable fuse"));
        Assert.True(rig.Holds(84, "tripped of booster cable fuse"));
        Assert.Equal(0, rig.At(85, "current of plus cable"), 0.01);
    }

    /// <summary>Sleeves that were changed make the right way the crossed one, and only the meter shows it.</summary>
    [Fact]
    public void RightWay_SleevesChanged_MeterShowsCrossed()
    {
        using Rig rig = Start("right way");
        rig.Do(65, "cable sleeves", "changed");
        Assert.True(rig.Reads(70, "polarity meter") < -15);
    }

    [Fact]
    public void Cables_Out_MeterShowsNothingAndTheMachineHasNothingOfIt()
    {
        using Rig rig = Start("out");
        Assert.Equal(0, rig.Reads(70, "polarity meter"), 1.01);
        rig.Do(80, "shop battery switch", "closed");
        Assert.Equal(0, rig.At(82, "current of plus cable"), 0.01);
        Assert.True(rig.Holds(83, "the clamps are live"));
    }

    /// <summary>The first case of the situation in which nothing is wrong with the batteries, with the cables as asked.</summary>
    private static Rig Start(string cables)
    {
        Rig rig = new(Books.Curlew, Books.Curlew.Book.Situations[Situation] with { Faults = [], Start = [.. Books.Curlew.Book.Situations[Situation].Start.Where(s => s.Name is not ("booster cables" or "cable sleeves" or "charge of shop battery"))] });
        rig.Do(1, "battery switch", "closed");
        rig.Do(2, "booster cables", cables);
        return rig;
    }
}
