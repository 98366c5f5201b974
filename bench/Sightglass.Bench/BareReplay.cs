using Sightglass.Basics.Numbers;
using Sightglass.Basics.Time;
using Sightglass.Network.Compile;
using Sightglass.Network.Groups;

namespace Sightglass.Bench;

/// <summary>Fixed schedules on the bare kernel, eight side by side; a lane that is done takes the next one.</summary>
internal sealed class BareReplay(Topology topology, double relativeTolerance, FixedSchedule[] schedules) : IDisposable
{
    private readonly LaneGroup _group = new(topology, relativeTolerance);
    private readonly FixedSchedule?[] _under = new FixedSchedule?[Lanes.Count];
    private readonly int[] _next = new int[Lanes.Count];
    private int _taken;

    /// <summary>Schedules whose last committed state came out otherwise than in the case they were taken from.</summary>
    public int Different { get; private set; }

    /// <summary>Iterations of the group so far.</summary>
    public long Iterations { get; private set; }

    /// <summary>Attempts of steps of all lanes so far.</summary>
    public long Attempts { get; private set; }

    public void Run()
    {
        _taken = 0;
        for (int running = 1; running > 0;)
        {
            running = 0;
            for (int lane = 0; lane < Lanes.Count; lane++)
            {
                if (_group.Task(lane) == LaneTask.None)
                {
                    Continue(lane);
                }

                running += _under[lane] is null ? 0 : 1;
            }

            if (running > 0)
            {
                _group.Iterate();
                Iterations++;
            }
        }
    }

    public void Dispose() => _group.Dispose();

    private void Continue(int lane)
    {
        while (_group.Task(lane) == LaneTask.None && (_under[lane] is not null || Load(lane)))
        {
            FixedSchedule schedule = _under[lane]!;
            long pending = _group.PendingEnd(lane).Ticks;
            bool change = _next[lane] < schedule.Changes.Length;
            long next = change ? schedule.Changes[_next[lane]].Ticks : schedule.End;
            bool isPending = _group.PendingEnd(lane) != SimTime.Never;
            if (!isPending && _group.Time(lane).Ticks == next && change)
            {
                Change(lane, schedule);
            }
            else if (!isPending && _group.Time(lane).Ticks < next)
            {
                _group.Propose(lane);
            }
            else if (isPending && pending <= next)
            {
                _group.Commit(lane);
            }
            else if (change)
            {
                _group.Cut(lane, new(next));
            }
            else
            {
                Finish(lane, schedule);
            }
        }
    }

    private void Change(int lane, FixedSchedule schedule)
    {
        long now = _group.Time(lane).Ticks;
        for (; _next[lane] < schedule.Changes.Length && schedule.Changes[_next[lane]].Ticks == now; _next[lane]++)
        {
            (_, int input, int parameter, double value) = schedule.Changes[_next[lane]];
            if (input >= 0)
            {
                _group.SetInput(lane, new(input), value);
            }
            else
            {
                _group.SetParameter(lane, parameter, value);
            }
        }
    }

    private bool Load(int lane)
    {
        if (_taken == schedules.Length)
        {
            return false;
        }

        FixedSchedule schedule = schedules[_taken++];
        (_under[lane], _next[lane]) = (schedule, 0);
        _group.Load(lane);
        for (int i = 0; i < schedule.Start.Length; i++)
        {
            _group.SetAmount(lane, new(i), schedule.Start[i]);
        }

        return true;
    }

    private void Finish(int lane, FixedSchedule schedule)
    {
        bool same = _group.Time(lane).Ticks == schedule.Committed;
        for (int i = 0; i < schedule.Last.Length; i++)
        {
            same &= _group.GetAmount(lane, new(i)) == schedule.Last[i];
        }

        Different += same ? 0 : 1;
        Attempts += _group.Attempts(lane);
        _under[lane] = null;
    }
}
