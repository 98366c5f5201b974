using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Time;
using Sightglass.Plant.Plans;
using Sightglass.Tests.Support;
using Sightglass.World.Tests.Trade;

namespace Sightglass.World.Tests.Air;

/// <summary>The demo machine's own air: it charges, applies, holds and releases in sensible times. Times are common practice, no source, unless a test says otherwise.</summary>
public sealed class CurlewAirTests
{
    private const double Psi = 6894.757293;

    /// <summary>
    /// 150 ft³/min into about 950 L of main reservoirs and 250 L of what the brakes hold: V·Δp/(p_a·Q) without losses is 161 s (Compressed Air and Gas Handbook, from memory); clearance,
    /// purge and what the pipes hold make it longer. The governor then rests.
    /// </summary>
    [Fact]
    public void Charge_FromNothing_FullInThreeMinutes()
    {
        using Rig rig = new(Books.Curlew, "air from nothing");
        Assert.True(rig.At(90, "pressure of first main reservoir") / Psi < 100);
        Assert.InRange(rig.At(240, "pressure of second main reservoir") / Psi, 130, 140);
        Assert.Equal(0, rig.At(240, "told of compressor governor"));
        Assert.Equal(110, rig.At(240, "pressure of brake pipe") / Psi, 1.0);
        Assert.Equal(0, rig.At(240, "told of low main reservoir relay"));
    }

    /// <summary>Full service: the brake pipe falls by 26 psi and the cylinders get 2.5·(26 − 3); half of the way up again leaves what the handle asks.</summary>
    [Fact]
    public void Service_FullThenHalfThenRelease_CylindersFollow()
    {
        using Rig rig = Running();
        rig.Do(10, "automatic brake handle", "full service");
        Assert.Equal(84, rig.At(40, "pressure of brake pipe") / Psi, 1.0);
        Assert.Equal(57.5, rig.At(60, "pressure of front brake cylinders") / Psi, 3.0);
        Assert.Equal(rig.At(60, "pressure of front brake cylinders"), rig.At(60, "pressure of rear brake cylinders"), 0.2 * Psi);
        rig.Do(60, "automatic brake handle", "half service");
        Assert.Equal(2.5 * (15 - 3), rig.At(120, "pressure of front brake cylinders") / Psi, 3.0);
        rig.Do(120, "automatic brake handle", "release");
        Assert.True(rig.At(150, "pressure of front brake cylinders") / Psi < 4);
        Assert.Equal(110, rig.At(150, "pressure of brake pipe") / Psi, 1.0);
    }

    /// <summary>Applied in full service, the cylinders hold for five minutes (49 CFR 229.59(c), read in the edition of 2015: not less than 5 minutes).</summary>
    [Fact]
    public void Service_Full_HoldsFiveMinutes()
    {
        using Rig rig = Running();
        rig.Do(10, "automatic brake handle", "full service");
        double at = rig.At(60, "pressure of rear brake cylinders");
        Assert.Equal(at, rig.At(360, "pressure of rear brake cylinders"), Psi);
    }

    /// <summary>Emergency: the pipe is empty within four seconds, the vent valve opens, the cylinders have their greatest pressure within ten.</summary>
    [Fact]
    public void Emergency_ByTheHandleOrByTheConductor_PipeEmptyAtOnce()
    {
        using Rig rig = Running();
        rig.Do(10, "automatic brake handle", "emergency");
        Assert.True(rig.At(10.5, "flow of pipe vent valve") > 0);
        Assert.True(rig.At(14, "pressure of brake pipe") / Psi < 3);
        Assert.Equal(60, rig.At(20, "pressure of front brake cylinders") / Psi, 4.0);
        using Rig other = Running();
        other.Do(10, "emergency brake valve", "open");
        Assert.True(other.At(15, "pressure of brake pipe") / Psi < 12);
        Assert.Equal(60, other.At(20, "pressure of front brake cylinders") / Psi, 4.0);
    }

    /// <summary>The independent brake sets and releases the machine alone; the higher of the two applications rules and they do not add.</summary>
    [Fact]
    public void Independent_WithAutomatic_HigherWins()
    {
        using Rig rig = Running();
        rig.Do(10, "independent brake handle", "full");
        Assert.Equal(50, rig.At(25, "pressure of front brake cylinders") / Psi, 2.0);
        rig.Do(30, "automatic brake handle", "half service");
        Assert.Equal(50, rig.At(60, "pressure of front brake cylinders") / Psi, 2.0);
        rig.Do(60, "independent brake handle", "released");
        Assert.Equal(30, rig.At(90, "pressure of front brake cylinders") / Psi, 3.0);
        Assert.Equal(95, rig.At(90, "pressure of brake pipe") / Psi, 1.0);
    }

    /// <summary>Held, the quick release lets the machine's automatic application go and leaves the pipe as it is; let go, the brake comes back as far as the pipe asks.</summary>
    [Fact]
    public void QuickRelease_HeldAndLetGo_ReleasesOnlyWhileHeld()
    {
        using Rig rig = Running();
        rig.Do(10, "automatic brake handle", "full service");
        rig.Do(60, "quick release lever", "held");
        Assert.True(rig.At(80, "pressure of front brake cylinders") / Psi < 4);
        Assert.Equal(84, rig.At(80, "pressure of brake pipe") / Psi, 1.0);
        rig.Do(80, "quick release lever", "free");
        Assert.Equal(57.5, rig.At(120, "pressure of front brake cylinders") / Psi, 3.0);
    }

    /// <summary>A penalty empties the equalising reservoir at a service rate, takes the power off, and stays until the handle stands in suppression with its cause gone.</summary>
    [Fact]
    public void Penalty_ByTheAlerter_StaysUntilReset()
    {
        using Rig rig = Running();
        rig.Do(10, "alerter", "timed out");
        Assert.Equal(0, rig.At(11, "flow of pipe vent valve"), 1e-9);
        Assert.True(rig.At(40, "pressure of equalising reservoir") / Psi < 40);
        Assert.True(rig.At(40, "pressure of front brake cylinders") / Psi > 50);
        Assert.Equal(1, rig.At(40, "told of power knockdown relay"));
        rig.Do(41, "alerter", "answered");
        Assert.Equal(1, rig.At(42, "told of penalty relay"));
        rig.Do(43, "automatic brake handle", "suppression");
        Assert.Equal(0, rig.At(44, "told of penalty relay"));
        rig.Do(60, "automatic brake handle", "release");
        Assert.Equal(110, rig.At(150, "pressure of brake pipe") / Psi, 1.0);
        Assert.Equal(0, rig.At(150, "told of power knockdown relay"));
    }

    /// <summary>The truck's cock vents its cylinders: the brake of that truck is off, the other one stays.</summary>
    [Fact]
    public void Cutout_OneTruckWhileSet_OnlyThatTruckIsFree()
    {
        using Rig rig = Running();
        rig.Do(10, "independent brake handle", "full");
        rig.Do(40, "front truck cutout cock", "closed");
        Assert.True(rig.At(60, "pressure of front brake cylinders") / Psi < 1);
        Assert.Equal(50, rig.At(60, "pressure of rear brake cylinders") / Psi, 2.0);
    }

    /// <summary>Cut out while it is applied, a truck whose cock does not vent keeps its brake: the air is trapped (common practice, no source).</summary>
    [Fact]
    public void Trade_08_CutoutCockThatDoesNotVent_KeepsTheBrake()
    {
        using Rig rig = Running();
        rig.Break(5, "front truck cutout cock", "vent plugged");
        rig.Do(10, "independent brake handle", "full");
        rig.Do(40, "front truck cutout cock", "closed");
        rig.Do(60, "independent brake handle", "released");
        Assert.Equal(50, rig.At(600, "pressure of front brake cylinders") / Psi, 2.0);
        Assert.True(rig.At(600, "pressure of rear brake cylinders") / Psi < 5);
    }

    /// <summary>
    /// A wheel of the rear truck between both brakes: with its spring held back 29 kN of air and 5 kN of spring, with a spring that is not held back 29 and 32. By hand: (50 − 8) psi on 200 mm by 3.2, and 32 kN · (1 − 50/60).
    /// </summary>
    [Theory]
    [InlineData(false, 34.4e3)]
    [InlineData(true, 61.1e3)]
    public void Trade_11_SpringThatIsNotHeldBack_AddsToTheServiceBrake(bool alone, double expected)
    {
        using Rig rig = Running();
        if (alone)
        {
            rig.Break(5, "left spring brake", "not held back");
        }

        rig.Do(10, "independent brake handle", "full");
        rig.Do(40, "parking brake control", "set");
        Assert.Equal(expected, rig.At(120, "force of left spring brake") + (rig.At(120, "shoe force of rear brake cylinders") / 4), 0.05 * expected);
        Assert.Equal(alone ? 1 : 0, rig.At(121, w => w.Value(rig.Plan.FindSignal("a rear wheel is pressed by both brakes")!) >= 0 ? 1 : 0));
    }

    /// <summary>Without brake pressure the springs press with all they have, with it the higher wins and the forces do not add (trade scenario 11).</summary>
    [Fact]
    public void ParkingBrake_SetAndSetWithService_DoesNotAdd()
    {
        using Rig rig = Running();
        Assert.Equal(0, rig.At(9, "force of right spring brake"));
        rig.Do(10, "parking brake control", "set");
        Assert.Equal(32_000, rig.At(60, "force of right spring brake"), 1500.0);
        rig.Do(60, "independent brake handle", "full");
        Assert.True(rig.At(90, "force of right spring brake") < 7000);
        rig.Do(90, "independent brake handle", "released");
        rig.Do(120, "parking brake control", "released");
        Assert.Equal(0, rig.At(180, "force of left spring brake"));
    }

    /// <summary>Emptying the first reservoir leaves the second behind its check valve: 3 minutes (the book's own proof).</summary>
    [Fact]
    public void CheckValve_FirstReservoirEmptied_SecondHolds()
    {
        using Rig rig = Running();
        rig.Do(9, "compressor switch", "off");
        double before = rig.At(10, "pressure of second main reservoir");
        rig.Do(10, "first reservoir drain cock", "open");
        Assert.Equal(before, rig.At(190, "pressure of second main reservoir"), 1.5 * Psi);
        Assert.True(rig.At(190, "pressure of first main reservoir") / Psi < 20);
    }

    /// <summary>An open cock with a loose hose empties the brake pipe and trips the vent valve: the machine brakes by itself.</summary>
    [Fact]
    public void AngleCock_OpenedOnALooseHose_Emergency()
    {
        using Rig rig = Running();
        rig.Do(10, "rear brake pipe angle cock", "open");
        Assert.True(rig.At(11, "head flow of rear brake pipe hose") > 0);
        Assert.Equal(60, rig.At(25, "pressure of rear brake cylinders") / Psi, 4.0);
    }

    /// <summary>Nothing wrong and nothing done: no air is lost, nothing moves, ten hours cost few steps.</summary>
    [Fact]
    public void Idle_TenHours_NothingMoves()
    {
        using Rig rig = new(Books.Curlew, "standing with air");
        double first = rig.At(600, "pressure of first main reservoir");
        Assert.Equal(first, rig.At(36_000, "pressure of first main reservoir"), 0.1 * Psi);
        Assert.Equal(110, rig.At(36_000, "pressure of brake pipe") / Psi, 0.5);
        Assert.Equal(50, rig.At(36_000, "pressure of front brake cylinders") / Psi, 1.0);
    }

    /// <summary>
    /// The train comes apart behind its first car. The vent valve of the machine blows as well, the relay valve is cut out by it and the main reservoirs are not blown out through the
    /// open pipe; in release nothing charges until the handle has been in emergency, and then the relay is reset (common practice, no source).
    /// </summary>
    [Fact]
    public void TrainParted_HandleInRelease_FeedIsCutOutUntilTheHandleWasInEmergency()
    {
        DiagnosticList found = new();
        Plan plan = PlanCompiler.Compile(Books.Curlew.Book.Coupled("local train"), found)!;
        using Rig rig = new(plan, "local train, charged");
        rig.World.Do(
            new WorldAction.PutIn("main reservoir pipe coupling between car 1 and car 2", "train parted", ImmutableSortedDictionary<string, double>.Empty), SimTime.FromSeconds(5));
        rig.Do(6, "B main reservoir angle cock of car 1", "closed");
        Assert.True(rig.At(60, "picked up of train emergency relay") >= 0);
        Assert.True(rig.At(60, "pressure of brake pipe") / Psi < 3);
        Assert.Equal(0, rig.At(60, "flow of brake pipe relay valve"), 1e-6);
        Assert.True(rig.At(60, "pressure of second main reservoir") / Psi > 110);
        Assert.True(rig.At(60, "brakes of every car are set") >= 0);
        rig.Do(60.5, "coupler lock between car 1 and car 2", "coupled");
        rig.Do(61, "brake pipe coupling between car 1 and car 2", "coupled");
        Assert.True(rig.At(100, "pressure of brake pipe") / Psi < 3);
        rig.Do(101, "automatic brake handle", "emergency");
        Assert.True(rig.At(105, "picked up of train emergency relay") < 0);
        rig.Do(170, "automatic brake handle", "release");
        Assert.Equal(110, rig.At(600, "pressure of brake pipe") / Psi, 2.0);
    }

    /// <summary>
    /// Release mixed in a train: at half of the way up the coaches in graduated release hold what the pipe still asks, 2.5·(15 − 3) psi, and the one set to direct has let go to the end (common practice,
    /// no source). Set alike they all hold.
    /// </summary>
    [Theory]
    [InlineData("last coach set for another train", 0)]
    [InlineData("local train, charged", 30)]
    public void Release_LastCoachSetToDirect_LetsGoWhileTheOthersHold(string situation, double last)
    {
        DiagnosticList found = new();
        using Rig rig = new(PlanCompiler.Compile(Books.Curlew.Book.Coupled("local train"), found)!, situation);
        rig.Do(10, "automatic brake handle", "full service");
        Assert.Equal(57.5, rig.At(100, "pressure of A truck cylinders of car 3") / Psi, 3.0);
        rig.Do(100, "automatic brake handle", "half service");
        Assert.Equal(30, rig.At(200, "pressure of A truck cylinders of car 1") / Psi, 3.0);
        Assert.Equal(last, rig.At(200, "pressure of A truck cylinders of car 3") / Psi, 3.0);
        Assert.Equal(last > 0, rig.At(200, "brakes of every car are set") >= 0);
    }

    private static Rig Running()
    {
        Rig rig = new(Books.Curlew, "standing with air");
        rig.Do(0.5, "independent brake handle", "released");
        return rig;
    }
}
