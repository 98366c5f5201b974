using Sightglass.Basics.Numbers;
using Sightglass.Network.Groups;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Tests;

public sealed class RememberedSignalTests
{
    private const string Draining = """
        items:
          tank: { kind: tank, position: { x: 5 m, y: 0 m, z: 1 m }, floor area: 1 m^2, depth: 1 m, ports: { outlet: { height: 0 mm } } }
          drain: { kind: hand valve, from: tank, to: outside, area: 1 cm^2 }

        """;

    /// <summary>The same as without remembering whatever is done to the bank, and worked out once while nothing is done.</summary>
    [Fact]
    public void Evaluate_WhateverIsDone_IsTheSignalsValue()
    {
        Plan plan = Plants.Compile(Draining);
        using LaneBank bank = new(plan);
        LaneGroup group = bank.Group(0);
        Counted truth = new(group.Topology.Paths);
        RememberedSignal remembered = new(truth);
        bank.LookAtEnds();
        Check("at first");
        group.Propose(1);
        Iterate("a step");
        group.Commit(1);
        Check("committed");
        group.SetParameter(1, 0, group.GetParameter(1, 0) * 1.01);
        Check("a parameter");
        group.SetInput(2, new(0), 0.5);
        Check("an input");
        bank.SetSlot(3, new(0), 7);
        Check("a slot");
        group.Propose(4);
        Iterate("another step");
        group.Load(1);
        Check("a load");

        void Iterate(string after)
        {
            while (group.Iterate() > 0)
            {
            }

            bank.LookAtEnds();
            Check(after);
        }

        void Check(string after)
        {
            Lanes expected = truth.Evaluate(bank);
            int before = truth.Count;
            for (int lane = 0; lane < Lanes.Count; lane++)
            {
                Assert.True(BitConverter.DoubleToInt64Bits(expected[lane]) == BitConverter.DoubleToInt64Bits(remembered.Evaluate(bank)[lane]), $"{after}, lane {lane}");
            }

            Assert.InRange(truth.Count - before, 0, 1);
        }
    }

    /// <summary>Everything a signal may be made of: flows of all paths, a slot; counts how often it was worked out.</summary>
    private sealed class Counted(int paths) : Signal
    {
        public int Count { get; private set; }

        public override Lanes Evaluate(LaneBank bank)
        {
            Count++;
            Lanes sum = bank.SlotLanes(new(0));
            for (int i = 0; i < paths; i++)
            {
                sum += bank.View(0).FlowOf(new(i, 0));
            }

            return sum;
        }

        public override void TellReads(SignalReads reads)
        {
            reads.Add(new Slot(0));
            reads.AddNetwork(0);
        }
    }
}
