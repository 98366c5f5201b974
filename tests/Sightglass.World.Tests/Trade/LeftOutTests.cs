using System.Collections.Immutable;
using Sightglass.Basics.Time;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;
using Sightglass.World.Runs;
using Sightglass.World.Snapshots;

namespace Sightglass.World.Tests.Trade;

/// <summary>Which systems a card depends on, and worlds that leave out the others.</summary>
public sealed class LeftOutTests
{
    /// <summary>Four tanks of four systems: the first's float steers a valve of the second; a lid bites while the third is full; nothing ties the fourth to anything.</summary>
    private const string Book = """
        book: Four tanks
        length: 20 m
        places: { panel: { x: 5 m, y: 2.4 m }, pit: { x: 9 m, y: 2.4 m } }
        roles: { hand: { walks: 1.3 m/s } }
        systems:
          first: { medium: fuel, alive: yes }
          second: { medium: fuel, alive: yes }
          third: { medium: fuel, alive: yes }
          fourth: { medium: fuel, alive: yes }
        items:
          drum: { kind: tank, system: first, floor area: 0.5 m^2, depth: 1.5 m, ports: { low: { height: 0 mm } } }
          hole: { kind: orifice, system: first, from: "drum, low", to: outside, diameter: 15 mm }
          float: { kind: transmitter, system: first, sends: level of drum / 1 m, band: 2 % }
          supply: { kind: tank, system: second, floor area: 50 m^2, depth: 1.5 m, ports: { low: { height: 0 mm } } }
          steered valve: { kind: actuated valve, system: second, from: "supply, low", to: outside, opened by: float, area: 1 cm^2 }
          third tank: { kind: tank, system: third, floor area: 1 m^2, depth: 1 m, ports: { low: { height: 0 mm } } }
          fourth tank: { kind: tank, system: fourth, floor area: 1 m^2, depth: 1 m, ports: { low: { height: 0 mm } } }
          fourth hole: { kind: orifice, system: fourth, from: "fourth tank, low", to: outside, diameter: 3 mm }
          tap: { kind: hand valve, system: fourth, from: "fourth tank, low", to: outside, area: 1 cm^2, usual: closed, who: [hand], places: [panel] }
          watcher: { kind: relay, system: first, picks up when: level of fourth tank > 0.2 m, drops when: level of fourth tank < 0.1 m }
          idle relay: { kind: relay, system: first, picks up when: picked up of watcher, drops when: open of tap }
          first glass: { kind: gauge, system: first, places: [panel], shows: level of drum, scale: 0 m .. 2 m, resolution: 1 cm }
          second glass: { kind: gauge, system: second, places: [panel], shows: level of supply, scale: 0 m .. 2 m, resolution: 1 cm }
          fourth glass: { kind: gauge, system: fourth, places: [panel], shows: level of fourth tank, scale: 0 m .. 2 m, resolution: 1 cm }
        facts:
          the ground is level: { is: grade < 1 % }
          drum is used: { is: volume of drum < 400 L }
        hazards:
          spray: { places: [pit], when: level of third tank > 0.5 m, danger: "It sprays and scalds. Wait until it is empty." }
        situations:
          draining:
            people: [ { role: hand, at: panel } ]
            start: { volume of drum: 500 L, volume of supply: 50 m^3, volume of third tank: 100 L, volume of fourth tank: 500 L }
            faults: [ { fault: stuck, on: fourth glass, after: 100 s } ]
        """;

    private const string Heads = "For: hand\nDone when: the ground is level.\n\n";

    /// <summary>Named beside each: what the card needs. Whatever is only operated, started with or broken is not needed.</summary>
    [Theory]
    [InlineData("1. Wait 60 s.", "")]
    [InlineData("1. Open the tap.", "")]
    [InlineData("1. Wait until the first glass shows at most 0.8 m, at most 10 min. If not, go to the end.", "first")]
    [InlineData("1. Wait until the second glass shows at most 0.99 m, at most 10 min. If not, go to the end.", "first second")]
    [InlineData("1. Read the fourth glass as H.", "fourth")]
    [InlineData("1. Go to pit.", "third")]
    [InlineData("1. Check that the tap is closed. If not, stop: it is open.", "")]
    public void Only_WhatACardAsksAbout_WhatBearsOnIt(string steps, string stepped)
    {
        Plan plan = Rig.Compile(Book, $"Card: Test\n{Heads}{steps}\n");
        Plan only = plan.Only(AskedSignals.Of(plan, Rig.ChoicesOf(plan, "Test"), plan.Book.Situations["draining"]));
        Assert.Equal(stepped.Split(' ', StringSplitOptions.RemoveEmptyEntries), only.Stepped.Select(n => plan.NetworkNames[n]));
        using Rig rig = new(only, "draining");
        rig.World.Begin(Rig.RunOf(plan, "Test"));
        rig.World.RunTo(SimTime.FromSeconds(7200));
        Assert.Equal(OutcomeKind.Done, rig.World.Run!.Ended);
    }

    /// <summary>What must never be and must be in the end is asked about as well.</summary>
    [Theory]
    [InlineData("Must never: drum is used.\nDone when: the ground is level.")]
    [InlineData("Done when: drum is used.")]
    public void Only_WhatACardIsJudgedBy_IsStepped(string heads)
    {
        Plan plan = Rig.Compile(Book, $"Card: Test\nFor: hand\n{heads}\n\n1. Wait 60 s.\n");
        Plan only = plan.Only(AskedSignals.Of(plan, Rig.ChoicesOf(plan, "Test"), plan.Book.Situations["draining"]));
        Assert.Equal(["second", "third", "fourth"], only.LeftOut);
    }

    [Fact]
    public void Value_OfWhatIsLeftOut_SaysSo()
    {
        Plan plan = Rig.Compile(Book);
        using Rig rig = new(plan.Only([plan.FindSignal("level of drum")!]), "draining");
        Assert.Equal(0.99, rig.At(1, "level of drum"), 0.05);
        InvalidOperationException told = Assert.Throws<InvalidOperationException>(() => rig.At(2, "level of fourth tank"));
        Assert.Contains("fourth", told.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Only_WhereEverythingIsAskedAbout_IsTheWholePlan()
    {
        Plan plan = Rig.Compile(Book);
        Assert.Same(plan, plan.Only(plan.Signals));
        Plan only = plan.Only([plan.FindSignal("level of drum")!]);
        Assert.Same(plan, only.Whole);
        Assert.Same(plan, only.Only(plan.Signals));
    }

    [Fact]
    public void Restore_SnapshotThatLeavesOutOtherSystems_IsRefused()
    {
        Plan plan = Rig.Compile(Book);
        Plan first = plan.Only([plan.FindSignal("level of drum")!]);
        using Rig rig = new(first, "draining");
        rig.World.RunTo(SimTime.FromSeconds(300));
        WorldSnapshot kept = WorldSnapshot.FromJson(rig.World.Save().ToJson());
        Assert.Equal(["second", "third", "fourth"], kept.LeftOut);
        foreach (Plan other in new[] { plan, plan.Only([plan.FindSignal("level of fourth tank")!]) })
        {
            using LaneBank bank = new(other);
            World world = new(bank, 0);
            Assert.Contains("fourth", Assert.Throws<ArgumentException>(() => world.Restore(kept)).Message, StringComparison.Ordinal);
        }

        using LaneBank own = new(first);
        World again = new(own, 5);
        again.Restore(kept);
        again.RunTo(SimTime.FromSeconds(900));
        rig.World.RunTo(SimTime.FromSeconds(900));
        again.CutHere();
        rig.World.CutHere();
        Assert.Equal(rig.World.Hash, again.Hash);
    }

    /// <summary>A network that nobody looks at stands aside: it bears on what is asked as if it were looked at, and may not be asked for itself.</summary>
    [Fact]
    public void Only_NetworksThatStandAside_EndAsWhenLookedAt()
    {
        Plan plan = Rig.Compile(Book, $"Card: Test\n{Heads}1. Wait 10 min.\n2. Read the second glass as H.\n3. Open the tap.\n4. Wait 60 s.\n");
        ImmutableArray<Signal> asked = AskedSignals.Of(plan, Rig.ChoicesOf(plan, "Test"), plan.Book.Situations["draining"]);
        Plan aside = plan.Only(asked, aside: true);
        Assert.Equal(["first"], aside.Aside.Select(n => plan.NetworkNames[n]));
        Assert.False(aside.Knows(plan.FindSignal("level of drum")!));
        Assert.True(aside.Knows(plan.FindSignal("level of supply")!) && plan.Only(asked).Knows(plan.FindSignal("level of drum")!));
        (Outcome lookedAt, double drum) = Run(plan.Only(asked));
        (Outcome stoodAside, double same) = Run(aside);
        Assert.Equal((OutcomeKind.Done, lookedAt.Step), (stoodAside.Kind, stoodAside.Step));
        Assert.Equal(lookedAt.Time.Seconds, stoodAside.Time.Seconds, 0.1);
        Assert.Equal(drum, same, 1e-3 * drum); // each is cut elsewhere, and a step may err

        (Outcome, double) Run(Plan stepped)
        {
            using Rig rig = new(stepped, "draining");
            rig.World.Begin(Rig.RunOf(plan, "Test"));
            rig.World.RunTo(SimTime.FromSeconds(7200));
            rig.World.CutHere();
            return (rig.World.Run!.Outcome, rig.World.GetAmount(0, new(0)));
        }
    }

    /// <summary>Whatever is not told for a slot stays as it was when the slot moves: inputs, switches that are armed, margins that see slots only.</summary>
    [Fact]
    public void Uses_SlotMoved_WhatIsNotToldStays()
    {
        Plan plan = Books.Curlew;
        Random chance = new(11);
        using LaneBank bank = new(plan);
        double[] slots = [.. plan.Slots.Select(s => s.Start)];
        int[] unseeing = [.. Enumerable.Range(0, plan.Switches.Length).Where(i => !plan.Uses.SeesState[i])];
        Assert.InRange(unseeing.Length, 1, plan.Switches.Length - 1);
        for (int draw = 0; draw < 3 * slots.Length; draw++)
        {
            Slot slot = new(draw % slots.Length);
            double[] inputs = [.. plan.Bindings.Select(b => b.Value(slots))];
            bool[] armed = [.. plan.Switches.Select(s => s.When(slots))];
            double[] margins = [.. unseeing.Select(i => plan.Switches[i].Margin.Evaluate(bank)[0])];
            slots[slot.Index] = chance.Next(2);
            bank.SetSlot(0, slot, slots[slot.Index]);
            HashSet<int> bindings = [.. plan.Uses.Bindings(slot)], switches = [.. plan.Uses.Switches(slot)];
            Assert.All(Enumerable.Range(0, inputs.Length).Where(i => !bindings.Contains(i)), i => Assert.Equal(inputs[i], plan.Bindings[i].Value(slots)));
            Assert.All(Enumerable.Range(0, armed.Length).Where(i => !switches.Contains(i)), i => Assert.Equal(armed[i], plan.Switches[i].When(slots)));
            Assert.All(unseeing.Index().Where(u => !switches.Contains(u.Item)), u => Assert.Equal(margins[u.Index], plan.Switches[u.Item].Margin.Evaluate(bank)[0]));
        }
    }

    /// <summary>
    /// Which slots an input's function reads nobody can see; that none is missed shows in this: whatever is set by switches of the networks that are left out, and
    /// however everything else stands, inputs and parameters of what is stepped stay the same.
    /// </summary>
    [Theory]
    [InlineData("four tanks")]
    [InlineData("curlew")]
    public void Only_SlotsSetByWhatIsLeftOut_AreReadByNothing(string book)
    {
        Plan plan = book == "curlew" ? Books.Curlew : Rig.Compile(Book);
        Random chance = new(7);
        ILookup<int, Signal> alone = plan.Signals.Select(s => (Signal: s, plan.Only([s]).Stepped)).Where(s => s.Stepped.Length == 1).ToLookup(s => s.Stepped[0], s => s.Signal);
        for (int network = 0; network < plan.Networks.Length; network++)
        {
            Plan only = plan.Only(alone[network]);
            int[] foreign = [.. plan.Switches.Where(s => !only.Steps(s.Network)).Select(s => s.Sets.Index)];
            for (int draw = 0; draw < 100; draw++)
            {
                double[] slots = [.. plan.Slots.Select(_ => (double)chance.Next(3))];
                double[] before = [.. only.Bindings.Select(b => b.Value(slots))];
                bool[] armed = [.. only.Switches.Select(s => s.When(slots))];
                foreach (int slot in foreign)
                {
                    slots[slot] = chance.Next(3);
                }

                Assert.Equal(before, only.Bindings.Select(b => b.Value(slots)));
                Assert.Equal(armed, only.Switches.Select(s => s.When(slots)));
            }
        }
    }
}
