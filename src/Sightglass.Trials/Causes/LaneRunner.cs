using Sightglass.Basics.Time;
using Sightglass.Network.Groups;
using Sightglass.Plant.Plans;

namespace Sightglass.Trials.Causes;

/// <summary>Runs many worlds of one machine to the same moment, eight at once, and shows each as it is then.</summary>
internal sealed class LaneRunner : IDisposable
{
    private readonly Plan _plan;
    private readonly LaneBank _bank;
    private readonly World.World[] _worlds;

    public LaneRunner(Plan plan)
    {
        _plan = plan;
        _bank = new(plan);
        _worlds = [.. Enumerable.Range(0, Basics.Numbers.Lanes.Count).Select(lane => new World.World(_bank, lane))];
    }

    /// <param name="count">How many.</param>
    /// <param name="within">Until when each is run.</param>
    /// <param name="begin">Puts a world, just reset, where the numbered one starts.</param>
    /// <param name="end">Looks at it at the end; not called for one that could not be run to it.</param>
    /// <param name="over">Called for each when it rests, whether it could be run to the end or not.</param>
    /// <param name="stop">Between two steps.</param>
    public void Run(int count, SimTime within, Action<World.World, int> begin, Action<World.World, int> end, Action<World.World, int>? over = null, CancellationToken stop = default)
    {
        int next = 0;
        int[] at = new int[_worlds.Length];
        int busy = 0;
        for (int lane = 0; lane < _worlds.Length; lane++)
        {
            int mine = lane;
            _worlds[lane].OnSample = world => end(world, at[mine]);
            busy += Load(lane) ? 1 : 0;
        }

        while (busy > 0)
        {
            stop.ThrowIfCancellationRequested();
            for (int lane = 0; lane < _worlds.Length; lane++)
            {
                if (at[lane] >= 0 && !HasTask(lane) && !_worlds[lane].Advance())
                {
                    over?.Invoke(_worlds[lane], at[lane]);
                    busy -= Load(lane) ? 0 : 1;
                }
            }

            foreach (int n in _plan.Stepped)
            {
                LaneGroup group = _bank.Group(n);
                if (_worlds.Any(w => group.Task(w.Lane) != LaneTask.None))
                {
                    group.Iterate();
                }
            }
        }

        bool Load(int lane)
        {
            if (next == count)
            {
                at[lane] = -1;
                return false;
            }

            at[lane] = next++;
            World.World world = _worlds[lane];
            world.Reset();
            begin(world, at[lane]);
            world.SampleAt(within);
            world.Limit = within;
            return true;
        }
    }

    public void Dispose() => _bank.Dispose();

    private bool HasTask(int lane)
    {
        foreach (int n in _plan.Stepped)
        {
            if (_bank.Group(n).Task(lane) != LaneTask.None)
            {
                return true;
            }
        }

        return false;
    }
}
