using System.Collections.Immutable;
using Sightglass.World.Situations;

namespace Sightglass.Trials.Sweep;

/// <summary>
/// Deals out cases to threads, each machine's in turn and all machines' evenly. When a trial is stopped, what was dealt so far is filled up to a whole
/// stretch: the cases done are the first ones of the trial, whatever they took, so that a bound on them is honest.
/// </summary>
internal sealed class CaseQueue
{
    private readonly Lock _dealing = new();
    private readonly bool _backwards;
    private readonly CancellationToken _stop;
    private readonly int[] _turns;
    private readonly int[] _next;
    private readonly int[] _end;
    private int _furthest = -1;
    private int _last = int.MaxValue;

    public CaseQueue(TrialSetup setup, SweepOptions options, CancellationToken stop)
    {
        (Cases, _backwards, _stop) = (options.Cases, options.Backwards, stop);
        (_turns, _next, _end) = (new int[Cases], new int[setup.Machines.Length], new int[setup.Machines.Length]);
        ushort[] machine = new ushort[Cases];
        CaseDraws draws = new(options.Seed, 0);
        for (int turn = 0; turn < Cases; turn++)
        {
            draws.Use(options.Seed, (ulong)(options.FirstCase + CaseAt(turn)));
            machine[turn] = (ushort)setup.IndexOf(draws);
            _end[machine[turn]]++;
        }

        for (int m = 1; m < _end.Length; m++)
        {
            (_next[m], _end[m]) = (_end[m - 1], _end[m] + _end[m - 1]);
        }

        int[] place = [.. _next];
        for (int turn = 0; turn < Cases; turn++)
        {
            _turns[place[machine[turn]]++] = turn;
        }
    }

    public int Cases { get; }

    /// <summary>How near a machine's next case is to be dealt: the least is to go on with. <see cref="int.MaxValue"/> when there is none.</summary>
    public int NextTurn(int machine)
    {
        int next = Volatile.Read(ref _next[machine]);
        return next < _end[machine] ? _turns[next] : int.MaxValue;
    }

    /// <summary>The next case of a machine from 0, or −1 when there is none.</summary>
    public int Take(int machine)
    {
        lock (_dealing)
        {
            if (_last == int.MaxValue && _stop.IsCancellationRequested)
            {
                _last = _furthest;
            }

            int turn = NextTurn(machine);
            if (turn == int.MaxValue || turn > _last)
            {
                _next[machine] = _end[machine];
                return -1;
            }

            _next[machine]++;
            _furthest = Math.Max(_furthest, turn);
            return CaseAt(turn);
        }
    }

    private int CaseAt(int turn) => _backwards ? Cases - 1 - turn : turn;
}
