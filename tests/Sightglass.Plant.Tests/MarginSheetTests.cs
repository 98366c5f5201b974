using Sightglass.Basics.Numbers;
using Sightglass.Network.Groups;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Tests;

/// <summary>Margins that are worked out together are those of the switches, bit for bit, whatever is asked for and whatever moves.</summary>
public sealed class MarginSheetTests
{
    [Fact]
    public void Evaluate_EverySwitchOfTheDemo_IsItsMargin()
    {
        Plan plan = Books.Curlew;
        using LaneBank bank = new(plan);
        Random chance = new(11);
        int compared = 0;
        foreach (int network in plan.Stepped)
        {
            LaneGroup group = bank.Group(network);
            MarginTape margins = plan.MarginsOf(network);
            MarginSheet sheet = new(bank, network, margins);
            Signal[] truths = [.. plan.Switches.Where(s => s.Network == network).Select(s => s.Margin)];
            GuardSet wanted = new();
            wanted.MakeRoom(Math.Max(1, truths.Length));
            Lanes[] values = new Lanes[truths.Length];
            for (int round = 0; round < 30; round++)
            {
                Move(bank, chance);
                Step(group, chance);
                for (int g = 0; g < truths.Length; g++)
                {
                    wanted[g] = margins.Moves[g] && chance.Next(3) > 0;
                }

                sheet.Evaluate(group.End, wanted, values);
                for (int g = wanted.From(0); g >= 0; g = wanted.From(g + 1))
                {
                    Lanes truth = truths[g].Evaluate(bank);
                    compared++;
                    for (int lane = 0; lane < Lanes.Count; lane++)
                    {
                        Assert.True(Bits(truth[lane]) == Bits(values[g][lane]), $"{plan.NetworkNames[network]}, switch {g}, round {round}, lane {lane}: {truth[lane]:R}, together {values[g][lane]:R}");
                    }
                }
            }
        }

        Assert.True(compared > 500, $"only {compared} margins were compared");
    }

    /// <summary>What several margins are made of stands on the tape once.</summary>
    [Fact]
    public void Tape_OfSwitchesThatLookAtTheSame_HasItOnce()
    {
        Plan plan = Books.Curlew;
        foreach (int network in plan.Stepped)
        {
            MarginTape margins = plan.MarginsOf(network);
            Assert.Equal(margins.Leaves.Length, margins.Leaves.DistinctBy(l => l.Signal).Count());
            Assert.Equal(margins.Slots.Length, margins.Slots.DistinctBy(s => s.Slot).Count());
        }
    }

    private static void Move(LaneBank bank, Random chance)
    {
        for (int i = 0; i < 40; i++)
        {
            int slot = chance.Next(bank.Plan.Slots.Length);
            bank.SetSlot(chance.Next(Lanes.Count), new(slot), chance.Next(2));
        }
    }

    private static void Step(LaneGroup group, Random chance)
    {
        int lane = chance.Next(Lanes.Count);
        group.Propose(lane);
        while (group.Iterate() > 0)
        {
        }

        if (group.PendingEnd(lane) != Basics.Time.SimTime.Never)
        {
            group.Commit(lane);
        }
    }

    private static long Bits(double x) => double.IsNaN(x) ? long.MinValue : BitConverter.DoubleToInt64Bits(x);
}
