using Sightglass.Basics.Time;
using Sightglass.Network.Groups;
using Sightglass.Plant.Plans;
using Sightglass.World.Runs;
using Sightglass.World.Situations;

namespace Sightglass.Trials.Sweep;

/// <summary>One thread's eight lanes of one machine.</summary>
internal sealed class LaneWorker : IDisposable
{
    private readonly TrialMachine _machine;
    private readonly int _number;
    private readonly ulong _seed;
    private readonly CaseQueue? _queue;
    private readonly int _firstCase;
    private readonly Action<int, Outcome> _done;
    private readonly LaneBank _bank;

    /// <summary>Of the networks that are stepped, the smallest first.</summary>
    private readonly LaneGroup[] _groups;
    private readonly World.World[] _worlds;
    private readonly CaseDraws[] _draws;
    private readonly int[] _case;
    private readonly CardRun[] _runs;
    private int _busy = -1;

    /// <summary>For the cases that a queue deals to one of the setup's machines.</summary>
    public LaneWorker(TrialSetup setup, int machine, ulong seed, CaseQueue? queue, int firstCase, Action<int, Outcome> done)
    {
        (_machine, _number, _seed, _queue, _firstCase, _done) = (setup.Machines[machine], machine, seed, queue, firstCase, done);
        _bank = new(_machine.Plan, setup.RelativeTolerance);
        _groups = [.. _machine.Plan.Stepped.Select(_bank.Group).OrderBy(g => g.Topology.Amounts)];
        _worlds = [.. Enumerable.Range(0, Basics.Numbers.Lanes.Count).Select(lane => new World.World(_bank, lane, setup.Times))];
        _draws = [.. _worlds.Select(_ => new CaseDraws(seed, 0))];
        _case = [.. _worlds.Select(_ => -1)];
        MarginCache margins = new();
        _runs = [.. _worlds.Select(_ => new CardRun(_machine.Choices, margins))];
    }

    /// <summary>For one case alone.</summary>
    public LaneWorker(TrialSetup setup, CaseDraws draws)
        : this(setup, setup.IndexOf(draws), draws.Seed, null, 0, (_, _) => { })
    {
    }

    /// <summary>Whether no case is under way and none is left to begin.</summary>
    public bool IsOver => _busy == 0 || (_busy < 0 && NextTurn == int.MaxValue);

    public int NextTurn => _queue!.NextTurn(_number);

    /// <summary>Hands over what has ended, begins others, and carries all lanes on by one attempt of a step.</summary>
    public void GoOn()
    {
        if (_busy < 0)
        {
            _busy = 0;
            for (int lane = 0; lane < _worlds.Length; lane++)
            {
                _busy += Load(lane) ? 1 : 0;
            }
        }

        for (int lane = 0; lane < _worlds.Length; lane++)
        {
            if (_case[lane] < 0 || HasTask(lane) || _worlds[lane].Advance())
            {
                continue;
            }

            _done(_case[lane], _worlds[lane].Run!.Outcome);
            _busy -= Load(lane) ? 0 : 1;
        }

        Iterate();
    }

    /// <summary>Runs one case alone and leaves its world to look at.</summary>
    public World.World RunOne(CaseDraws draws, bool journal)
    {
        World.World world = _worlds[0];
        world.Journal = journal ? [] : null;
        Begin(world, draws);
        world.RunTo(SimTime.Never);
        return world;
    }

    public void Dispose() => _bank.Dispose();

    private bool Load(int lane)
    {
        _case[lane] = _queue!.Take(_number);
        if (_case[lane] < 0)
        {
            return false;
        }

        _draws[lane].Use(_seed, (ulong)(_firstCase + _case[lane]));
        Begin(_worlds[lane], _draws[lane]);
        return true;
    }

    private void Begin(World.World world, CaseDraws draws)
    {
        world.Reset();
        _machine.Start.Apply(world, draws);
        world.Begin(_runs[world.Lane]);
        world.Limit = SimTime.Never;
    }

    private bool HasTask(int lane)
    {
        foreach (LaneGroup group in _groups)
        {
            if (group.Task(lane) != LaneTask.None)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>
    /// One attempt of the network that most lanes wait for, the smaller of two: which comes first bears on no outcome, and an attempt of eight lanes takes as long as one of a single lane.
    /// </summary>
    private void Iterate()
    {
        (LaneGroup? next, int most) = (null, 0);
        foreach (LaneGroup group in _groups)
        {
            int waiting = 0;
            for (int lane = 0; lane < _worlds.Length; lane++)
            {
                waiting += group.Task(lane) != LaneTask.None ? 1 : 0;
            }

            (next, most) = waiting > most ? (group, waiting) : (next, most);
        }

        next?.Iterate();
    }
}
