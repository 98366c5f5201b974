using Sightglass.World.Journal;
using Sightglass.World.Runs;
using Sightglass.World.Tests.Trade;

namespace Sightglass.World.Tests.People;

/// <summary>
/// What forms that hold, turn, walk, look and repeat come to in the machine's time. The gauge shows B and C of 4,800 L and sinks from 50 % by 8.5 L/min at
/// full throttle (derived), rounded to the per cent: 49 % from 72 L on, after 72 / 8.5 min, and a reaction of 2 s later.
/// </summary>
public sealed class FormTests
{
    private const double Sunk = 0.015 * 4800 / 8.5 * 60;
    private const string Signs = "signs:\n  engine is heard: { sense: heard, when: running of engine, from: [cab, panel] }\n  smoke is seen: { sense: seen, when: running of engine, from: [panel] }\n";

    [Fact]
    public void Run_Hold_LetsGoAgain()
    {
        World world = Work("", "Hold the throttle at full for 10 s.", "Check that the throttle is idle. If not, stop: held on.");
        Assert.Equal((OutcomeKind.Done, 12.0), Ended(world));
    }

    [Theory]
    [InlineData("Hold the throttle at full", "idle")]
    [InlineData("Turn the throttle to full", "full")]
    public void Run_UntilItShows_LetsGoOrLeavesIt(string form, string after)
    {
        World world = Work("", $"{form} until the fuel gauge shows at most 48 %, at most 1 h. If not, stop.");
        Assert.Equal(OutcomeKind.Done, world.Run!.Ended);
        Assert.Equal(Sunk + 2, world.Run.EndedAt.Seconds, 20.0);
        Assert.Equal(after, Position(world, "throttle"));
    }

    [Theory]
    [InlineData("Hold the throttle at full", "idle", 20)]
    [InlineData("Turn the throttle to full", "full", 21)]
    public void Run_UntilTheTimeIsOver_LetsGoOrLeavesIt(string form, string after, double seconds)
    {
        World world = Work("", $"{form} until the fuel gauge shows low, at most 20 s. If not, stop: still not.");
        Assert.Equal((OutcomeKind.Stopped, seconds), Ended(world));
        Assert.Equal(after, Position(world, "throttle"));
    }

    [Fact]
    public void Run_WalkFrom_IsAtBothEnds()
    {
        World world = Work("", "Walk from the panel to the cab.");
        double way = world.Plan.Ways.Seconds(world.Plan.Ways.IndexOf("panel"), world.Plan.Ways.IndexOf("cab"));
        Assert.Equal(2 * way, world.Run!.EndedAt.Seconds, 2e-3);
        Assert.Equal(["You went to the panel.", "You went to the cab."], world.Journal!.Where(j => j.Kind == JournalKind.Deed).Select(j => j.Text));
    }

    /// <summary>What is heard from here is found; what is seen from elsewhere, only there.</summary>
    [Theory]
    [InlineData("", "Look whether engine is heard. If not, stop: no.")]
    [InlineData("stopped", "Look for smoke. If not, stop: no.")]
    [InlineData("", "Go to the panel.", "Look for smoke at the panel. If not, stop: no.")]
    [InlineData("panel is not within reach", "Look for smoke at the panel. If not, stop: no.")]
    public void Run_Look_FindsWhatIsThere(string mechanism, params string[] steps)
    {
        World world = Work(Signs, steps);
        Assert.Equal(
            mechanism switch { "" => (OutcomeKind.Done, ""), "stopped" => (OutcomeKind.Stopped, "no"), _ => (OutcomeKind.Failed, mechanism) },
            (world.Run!.Ended, world.Run.Mechanism));
    }

    /// <summary>Each round begins with a look of 2 s: at 30 s, not sooner than a minute after, and at the third it is given up.</summary>
    [Fact]
    public void Run_Repeat_WaitsItsPeriodAndGivesUp()
    {
        World world = Work("", "Wait 30 s.", "Repeat step 1 until the fuel gauge shows low, at most 3 times, every 1 min. If not, stop: never.");
        Assert.Equal(OutcomeKind.Stopped, world.Run!.Ended);
        Assert.Equal(30 + 2 + 60 + 60, world.Run.EndedAt.Seconds, 3);
    }

    [Fact]
    public void Run_DoOneOf_DoesTheFirstThatHolds()
    {
        World world = Work("", "Do one of:\n   - If the fuel gauge shows low, stop: low.\n   - If the throttle is idle, turn the throttle to full.\n   - Stop: none.");
        Assert.Equal(OutcomeKind.Done, world.Run!.Ended);
        Assert.Equal("full", Position(world, "throttle"));
    }

    private static World Work(string sections, params string[] steps)
    {
        using Rig rig = new(Card.Plan(sections, steps), "standing");
        return Card.Run(rig);
    }

    private static (OutcomeKind Kind, double Seconds) Ended(World world) => (world.Run!.Ended, Math.Round(world.Run.EndedAt.Seconds, 3));

    private static string Position(World world, string item) =>
        world.Plan.Book.Items[item].Positions[(int)world.GetSlot(world.Plan.Items[item].Position!.Value)];
}
