using Sightglass.Basics.Time;
using Sightglass.Network.Compile;
using Sightglass.Network.Groups;
using Sightglass.Plant.Plans;
using Sightglass.Trials.Sweep;
using Sightglass.World.Runs;

namespace Sightglass.Bench;

/// <summary>What one case of a trial did to the network that its card asks about, as a list that can be replayed on the bare kernel: no world, no people, no guards.</summary>
/// <param name="Start">At the start.</param>
/// <param name="Changes">Moments in ascending order, each with the number it sets: an input, or a parameter where <c>Input</c> is negative.</param>
/// <param name="End">When the case was over.</param>
/// <param name="Committed">Of the last committed state.</param>
/// <param name="Last">That state's amounts, to see that a replay is the same run.</param>
/// <param name="Attempts">Attempts of steps of the case itself: those that were only looked at and closings in on a moment included.</param>
internal sealed record FixedSchedule(double[] Start, (long Ticks, int Input, int Parameter, double Value)[] Changes, long End, long Committed, double[] Last, long Attempts)
{
    /// <summary>The one network that a trial's plan steps.</summary>
    public static int NetworkOf(Plan plan) => plan.Stepped.Single();

    /// <summary>Runs a case on the setup's only machine and notes every number of its network that changed, and when.</summary>
    public static FixedSchedule Record(TrialSetup setup, ulong seed, int number)
    {
        TrialMachine machine = setup.Machines[0];
        using LaneBank bank = new(machine.Plan, setup.RelativeTolerance);
        World.World world = new(bank, 0, setup.Times);
        machine.Start.Apply(world, seed, (ulong)number);
        world.Begin(new CardRun(machine.Choices));
        world.Limit = SimTime.Never;
        LaneGroup group = bank.Group(NetworkOf(machine.Plan));
        Topology topology = group.Topology;
        double[] start = AmountsOf(group);
        double[] inputs = new double[topology.Inputs];
        double[] parameters = new double[topology.Parameters];
        using (LaneGroup fresh = new(topology, setup.RelativeTolerance))
        {
            Note(fresh, inputs, parameters, null);
        }

        List<(long, int, int, double)> changes = [];
        while (world.Advance())
        {
            Note(group, inputs, parameters, changes);
            while (group.Task(0) != LaneTask.None)
            {
                group.Iterate();
            }
        }

        return new(start, [.. changes], world.Run!.Outcome.Time.Ticks, group.Time(0).Ticks, AmountsOf(group), group.Attempts(0));
    }

    private static double[] AmountsOf(LaneGroup group) => [.. Enumerable.Range(0, group.Topology.Amounts).Select(i => group.GetAmount(0, new(i)))];

    private static void Note(LaneGroup group, double[] inputs, double[] parameters, List<(long, int, int, double)>? changes)
    {
        for (int i = 0; i < inputs.Length; i++)
        {
            if (group.GetInput(0, new(i)) != inputs[i])
            {
                inputs[i] = group.GetInput(0, new(i));
                changes?.Add((group.Time(0).Ticks, i, -1, inputs[i]));
            }
        }

        for (int i = 0; i < parameters.Length; i++)
        {
            if (group.GetParameter(0, i) != parameters[i])
            {
                parameters[i] = group.GetParameter(0, i);
                changes?.Add((group.Time(0).Ticks, -1, i, parameters[i]));
            }
        }
    }
}
