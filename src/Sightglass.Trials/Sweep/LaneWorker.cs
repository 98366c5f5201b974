using Sightglass.Basics.Time;
using Sightglass.Network.Groups;
using Sightglass.Plant.Plans;
using Sightglass.World.Runs;
using Sightglass.World.Situations;

namespace Sightglass.Trials.Sweep;

/// <summary>One thread's eight lanes.</summary>
internal sealed class LaneWorker : IDisposable
{
    private readonly TrialSetup _setup;
    private readonly ulong _seed;
    private readonly LaneBank _bank;
    private readonly World.World[] _worlds;
    private readonly CaseDraws[] _draws;
    private readonly int[] _case;
    private readonly CardRun[] _runs;

    public LaneWorker(TrialSetup setup, ulong seed)
    {
        (_setup, _seed) = (setup, seed);
        _bank = new(setup.Plan, setup.RelativeTolerance);
        _worlds = [.. Enumerable.Range(0, Basics.Numbers.Lanes.Count).Select(lane => new World.World(_bank, lane, setup.Times))];
        _draws = [.. _worlds.Select(_ => new CaseDraws(seed, 0))];
        _case = [.. _worlds.Select(_ => -1)];
        MarginCache margins = new();
        _runs = [.. _worlds.Select(_ => new CardRun(setup.Choices, margins))];
    }

    public void Run(CaseQueue queue, int firstCase, Action<int, Outcome> done, CancellationToken stop)
    {
        int busy = 0;
        for (int lane = 0; lane < _worlds.Length; lane++)
        {
            busy += Load(lane, queue, firstCase) ? 1 : 0;
        }

        while (busy > 0 && !stop.IsCancellationRequested)
        {
            for (int lane = 0; lane < _worlds.Length; lane++)
            {
                if (_case[lane] < 0 || HasTask(lane) || _worlds[lane].Advance())
                {
                    continue;
                }

                done(_case[lane], _worlds[lane].Run!.Outcome);
                busy -= Load(lane, queue, firstCase) ? 0 : 1;
            }

            Iterate();
        }
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

    private bool Load(int lane, CaseQueue queue, int firstCase)
    {
        _case[lane] = queue.Take();
        if (_case[lane] < 0)
        {
            return false;
        }

        _draws[lane].Use(_seed, (ulong)(firstCase + _case[lane]));
        Begin(_worlds[lane], _draws[lane]);
        return true;
    }

    private void Begin(World.World world, CaseDraws draws)
    {
        world.Reset();
        _setup.Start.Apply(world, draws);
        world.Begin(_runs[world.Lane]);
        world.Limit = SimTime.Never;
    }

    private bool HasTask(int lane)
    {
        for (int n = 0; n < _bank.Networks; n++)
        {
            if (_bank.Group(n).Task(lane) != LaneTask.None)
            {
                return true;
            }
        }

        return false;
    }

    private void Iterate()
    {
        for (int n = 0; n < _bank.Networks; n++)
        {
            LaneGroup group = _bank.Group(n);
            for (int lane = 0; lane < _worlds.Length; lane++)
            {
                if (group.Task(lane) != LaneTask.None)
                {
                    group.Iterate();
                    break;
                }
            }
        }
    }
}
