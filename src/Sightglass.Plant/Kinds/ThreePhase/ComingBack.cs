using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Network.Compile;
using Sightglass.Network.Laws.Common;
using Sightglass.Plant.Kinds.Common;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Kinds.ThreePhase;

/// <summary>How a load comes back after it was without voltage: it waits, it starts with more than it takes, it runs.</summary>
internal static class ComingBack
{
    public static readonly KindParameter[] Parameters =
    [
        Parameter.Of(Inrush, Dimension.One, "Times its current that it takes while it starts, at its rated voltage: its motors, compressors and fans together.", "1", "1", "12"),
        Parameter.Of(Lasts, Dimension.Second, "How long it starts.", "5 s", "0.1 s", "5 min"),
        Parameter.Of(StartingFactor, Dimension.One, "Lagging, while it starts.", "40 %", "1 %", "100 %"),
        Parameter.Of(Delay, Dimension.Second, "How long it waits before it starts when its voltage has come back.", "0 s", "0 s", "30 min"),
    ];

    private const string Inrush = "inrush";
    private const string Lasts = "inrush lasts";
    private const string StartingFactor = "inrush power factor";
    private const string Delay = "comes back after";

    /// <summary>s of too little voltage that its contactors ride through, and that they take to close (common practice, no source).</summary>
    private const double Contactors = 0.1;

    /// <summary>Share of its rated voltage at which its contactors drop (common practice, no source: half to seven tenths).</summary>
    private const double Drops = 0.5;

    /// <summary>What its slot tells: that it takes nothing, starts, runs.</summary>
    private const int Off = 0, Begins = 1, Runs = 2;

    /// <summary>Whether it does anything else than take its power as soon as it has voltage.</summary>
    public static bool Applies(Item item) => item.Get(Inrush) > 1 || item.Get(Delay) > 0;

    /// <summary>VA that it takes at its rated voltage for each VA of its own while it starts, and the power factor of that.</summary>
    public static (double Times, double Factor) Start(Item item) => (item.Get(Inrush), item.Get(StartingFactor));

    /// <summary>The same as a margin.</summary>
    public static Signal Starting(PlanBuilder plan, Item item)
    {
        Slot stage = Stage(plan, item);
        return new AllSignal([new SlotSignal(stage, 1, 0.5 - Begins), new SlotSignal(stage, -1, Begins + 0.5)]);
    }

    public static SlotFunction IsStarting(PlanBuilder plan, Item item) => Is(plan, item, Begins);

    public static SlotFunction IsRunning(PlanBuilder plan, Item item) => Is(plan, item, Runs);

    /// <summary>
    /// A clock, the moment at which its voltage came or went (above 0 from when it has it, below 0 from when it lacks it, each a second more than the clock), and what it does. What has voltage at the start of a run
    /// has had it before.
    /// </summary>
    public static void Add(PlanBuilder plan, Item item, Slot volts)
    {
        int network = plan.NetworkOf(item, Fluid.Charge);
        Amount clock = LagNumber.Add(plan, network, $"clock of {item.Name}", Lag.Counter(1), _ => 1);
        Slot since = plan.SlotNamed($"voltage since of {item.Name}", -1);
        Slot stage = Stage(plan, item);
        double rated = item.Get("rated voltage");
        double delay = Math.Max(Contactors, item.Get(Delay));
        plan.AddSwitch(new($"", network, new SlotSignal(volts, 1, -item.Get("works from") * rated), s => s[since.Index] < 0, since, new PotentialSignal(network, clock, 1, 1), Jumps: true));
        plan.AddSwitch(new($"", network, new SlotSignal(volts, -1, Drops * rated), s => s[since.Index] > 0, since, new PotentialSignal(network, clock, -1, -1), Jumps: true));
        plan.AddSwitch(new($"", network, After(Contactors, 1), s => s[since.Index] < 0 && s[stage.Index] != Off, stage, new ConstantSignal(Off), Jumps: true));
        plan.AddSwitch(new($"", network, After(delay, -1), s => s[since.Index] > 0 && s[stage.Index] == Off, stage, new ConstantSignal(item.Get(Inrush) > 1 ? Begins : Runs), Jumps: true));
        plan.AddSwitch(new($"", network, After(delay + item.Get(Lasts), -1), s => s[since.Index] > 0 && s[stage.Index] == Begins, stage, new ConstantSignal(Runs), Jumps: true));

        SumSignal After(double seconds, double sign) => new([new PotentialSignal(network, clock, 1, 1 - seconds), new SlotSignal(since, sign)]);
    }

    private static SlotFunction Is(PlanBuilder plan, Item item, int which)
    {
        Slot stage = Stage(plan, item);
        return s => s[stage.Index] == which ? 1 : 0;
    }

    private static Slot Stage(PlanBuilder plan, Item item) => plan.SlotNamed($"stage of {item.Name}", Runs);
}
