using Sightglass.Basics.Time;
using Sightglass.Network.Compile;
using Sightglass.Network.Groups;
using Sightglass.Plant.Plans;
using Sightglass.Trials.Sweep;
using Sightglass.World.Runs;

namespace Sightglass.Bench;

/// <summary>What one case of a trial did to one of the networks that it steps, as a list that can be replayed on the bare kernel: no world, no people, no guards.</summary>
/// <param name="Start">At the start.</param>
/// <param name="Changes">Moments in ascending order, each with the number it sets: an input, or a parameter where <c>Input</c> is negative.</param>
/// <param name="End">When the case was over.</param>
/// <param name="Committed">Of the last committed state.</param>
/// <param name="Last">That state's amounts, to see that a replay is the same run.</param>
/// <param name="Attempts">Attempts of steps of the case itself: those that were only looked at and closings in on a moment included.</param>
internal sealed record FixedSchedule(double[] Start, (long Ticks, int Input, int Parameter, double Value)[] Changes, long End, long Committed, double[] Last, long Attempts)
{
    /// <summary>Runs a case on the setup's only machine and notes every number of its networks that changed, and when.</summary>
    /// <returns>One for each network that the plan steps, in their order.</returns>
    public static FixedSchedule[] Record(TrialSetup setup, ulong seed, int number)
    {
        TrialMachine machine = setup.Machines[0];
        using LaneBank bank = new(machine.Plan, setup.RelativeTolerance);
        World.World world = new(bank, 0, setup.Times);
        machine.Start.Apply(world, seed, (ulong)number);
        world.Begin(new CardRun(machine.Choices));
        world.Limit = SimTime.Never;
        Watched[] networks = [.. machine.Plan.Stepped.Select(n => new Watched(bank.Group(n), setup.RelativeTolerance))];
        while (world.Advance())
        {
            foreach (Watched network in networks)
            {
                network.Note();
                while (network.Group.Task(0) != LaneTask.None)
                {
                    network.Group.Iterate();
                }
            }
        }

        return [.. networks.Select(n => n.End(world.Run!.Outcome.Time.Ticks))];
    }

    /// <summary>One network while its case runs.</summary>
    private sealed class Watched
    {
        private readonly double[] _start;
        private readonly double[] _inputs;
        private readonly double[] _parameters;
        private readonly List<(long, int, int, double)> _changes = [];

        public Watched(LaneGroup group, double relativeTolerance)
        {
            (Group, _start) = (group, AmountsOf(group));
            using LaneGroup fresh = new(group.Topology, relativeTolerance);
            _inputs = [.. Enumerable.Range(0, group.Topology.Inputs).Select(i => fresh.GetInput(0, new(i)))];
            _parameters = [.. Enumerable.Range(0, group.Topology.Parameters).Select(i => fresh.GetParameter(0, i))];
        }

        public LaneGroup Group { get; }

        public void Note()
        {
            long now = Group.Time(0).Ticks;
            for (int i = 0; i < _inputs.Length; i++)
            {
                if (Group.GetInput(0, new(i)) != _inputs[i])
                {
                    _inputs[i] = Group.GetInput(0, new(i));
                    _changes.Add((now, i, -1, _inputs[i]));
                }
            }

            for (int i = 0; i < _parameters.Length; i++)
            {
                if (Group.GetParameter(0, i) != _parameters[i])
                {
                    _parameters[i] = Group.GetParameter(0, i);
                    _changes.Add((now, -1, i, _parameters[i]));
                }
            }
        }

        public FixedSchedule End(long end) => new(_start, [.. _changes], end, Group.Time(0).Ticks, AmountsOf(Group), Group.Attempts(0));

        private static double[] AmountsOf(LaneGroup group) => [.. Enumerable.Range(0, group.Topology.Amounts).Select(i => group.GetAmount(0, new(i)))];
    }
}
