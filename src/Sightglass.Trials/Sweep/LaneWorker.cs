using Sightglass.Basics.Numbers;
using Sightglass.Basics.Time;
using Sightglass.Network.Groups;
using Sightglass.Plant.Plans;
using Sightglass.World.Runs;
using Sightglass.World.Situations;

namespace Sightglass.Trials.Sweep;

/// <summary>
/// One thread's lanes of one machine, in banks of eight. Where there are several banks, the lanes that wait for the same network take their attempts together whichever bank they are
/// in: an attempt of eight lanes takes as long as one of a single lane, and lanes whose networks take turns would leave each other's places empty.
/// </summary>
internal sealed class LaneWorker : IDisposable
{
    private readonly TrialMachine _machine;
    private readonly int _number;
    private readonly ulong _seed;
    private readonly CaseQueue? _queue;
    private readonly int _firstCase;
    private readonly Action<int, Outcome> _done;
    private readonly LaneBank[] _banks;

    /// <summary>Where lanes of several banks take an attempt together.</summary>
    private readonly LaneBank? _together;
    private readonly LanePick _pick;

    /// <summary>The networks that are stepped, the smallest first.</summary>
    private readonly int[] _networks;

    /// <summary>Of each of them, the groups of the banks.</summary>
    private readonly LaneGroup[][] _groups;
    private readonly World.World[] _worlds;
    private readonly CaseDraws[] _draws;
    private readonly int[] _case;
    private readonly CardRun[] _runs;
    private int _busy = -1;

    /// <summary>For the cases that a queue deals to one of the setup's machines.</summary>
    /// <param name="setup">What is tried.</param>
    /// <param name="machine">Which of its machines.</param>
    /// <param name="seed">Of the draws.</param>
    /// <param name="queue">Deals the cases.</param>
    /// <param name="firstCase">The number of the first.</param>
    /// <param name="banks">How many banks of eight lanes, from 1.</param>
    /// <param name="done">Takes the outcomes.</param>
    public LaneWorker(TrialSetup setup, int machine, ulong seed, CaseQueue? queue, int firstCase, int banks, Action<int, Outcome> done)
    {
        (_machine, _number, _seed, _queue, _firstCase, _done) = (setup.Machines[machine], machine, seed, queue, firstCase, done);
        Plan plan = _machine.Plan;
        _banks = [.. Enumerable.Range(0, banks).Select(_ => new LaneBank(plan, setup.RelativeTolerance))];
        _together = banks > 1 ? new(plan, setup.RelativeTolerance) : null;
        _pick = new(banks);
        _networks = [.. plan.Stepped.OrderBy(n => plan.Networks[n].Amounts)];
        _groups = [.. _networks.Select(n => _banks.Select(b => b.Group(n)).ToArray())];
        _worlds = [.. _banks.SelectMany(b => Enumerable.Range(0, Lanes.Count).Select(lane => new World.World(b, lane, setup.Times)))];
        _draws = [.. _worlds.Select(_ => new CaseDraws(seed, 0))];
        _case = [.. _worlds.Select(_ => -1)];
        MarginCache[] margins = [.. _banks.Select(_ => new MarginCache())];
        _runs = [.. _worlds.Select((_, w) => new CardRun(_machine.Choices, margins[w / Lanes.Count]))];
    }

    /// <summary>For one case alone.</summary>
    public LaneWorker(TrialSetup setup, CaseDraws draws)
        : this(setup, setup.IndexOf(draws), draws.Seed, null, 0, 1, (_, _) => { })
    {
    }

    /// <summary>Whether no case is under way and none is left to begin.</summary>
    public bool IsOver => _busy == 0 || (_busy < 0 && NextTurn == int.MaxValue);

    public int NextTurn => _queue!.NextTurn(_number);

    /// <summary>Hands over what has ended, begins others, and carries lanes on by one attempt of a step.</summary>
    public void GoOn()
    {
        if (_busy < 0)
        {
            _busy = 0;
            for (int world = 0; world < _worlds.Length; world++)
            {
                _busy += Load(world) ? 1 : 0;
            }
        }

        for (int world = 0; world < _worlds.Length; world++)
        {
            if (_case[world] < 0 || HasTask(world) || _worlds[world].Advance())
            {
                continue;
            }

            _done(_case[world], _worlds[world].Run!.Outcome);
            _busy -= Load(world) ? 0 : 1;
        }

        Iterate();
    }

    /// <summary>Runs one case alone and leaves its world to look at.</summary>
    public World.World RunOne(CaseDraws draws, bool journal)
    {
        World.World world = _worlds[0];
        world.Journal = journal ? [] : null;
        Begin(0, draws);
        world.RunTo(SimTime.Never);
        return world;
    }

    public void Dispose()
    {
        Array.ForEach(_banks, b => b.Dispose());
        _together?.Dispose();
    }

    private bool Load(int world)
    {
        _case[world] = _queue!.Take(_number);
        if (_case[world] < 0)
        {
            return false;
        }

        _draws[world].Use(_seed, (ulong)(_firstCase + _case[world]));
        Begin(world, _draws[world]);
        return true;
    }

    private void Begin(int number, CaseDraws draws)
    {
        World.World world = _worlds[number];
        world.Reset();
        _machine.Start.Apply(world, draws);
        world.Begin(_runs[number]);
        world.Limit = SimTime.Never;
    }

    private bool HasTask(int world)
    {
        foreach (LaneGroup[] groups in _groups)
        {
            if (groups[world / Lanes.Count].Task(world % Lanes.Count) != LaneTask.None)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>One attempt of the network that most worlds wait for, of the smaller of two: which comes first bears on no outcome.</summary>
    private void Iterate()
    {
        (int next, int most) = (-1, 0);
        for (int n = 0; n < _networks.Length; n++)
        {
            int waiting = 0;
            foreach (LaneGroup group in _groups[n])
            {
                for (int lane = 0; lane < Lanes.Count; lane++)
                {
                    waiting += group.Task(lane) != LaneTask.None ? 1 : 0;
                }
            }

            (next, most) = waiting > most ? (n, waiting) : (next, most);
        }

        if (next >= 0)
        {
            Iterate(next);
        }
    }

    private void Iterate(int network)
    {
        LaneGroup[] groups = _groups[network];
        if (_together is null)
        {
            groups[0].Iterate();
            return;
        }

        _pick.Clear();
        for (int world = 0; world < _worlds.Length && !_pick.IsFull; world++)
        {
            (int bank, int lane) = (world / Lanes.Count, world % Lanes.Count);
            if (groups[bank].Task(lane) != LaneTask.None)
            {
                _pick.Add(bank, lane);
            }
        }

        _together.IterateFor(_networks[network], _banks, groups, _pick);
    }
}
