using Sightglass.Basics.Time;
using Sightglass.Plant.Signals;

namespace Sightglass.World;

public sealed partial class World
{
    /// <summary>Begins to watch a margin for somebody; only with a state in view.</summary>
    /// <returns>Its value now: not negative when there is nothing to wait for.</returns>
    internal double Watch(int owner, Signal margin)
    {
        double now = Value(margin);
        AddSentinel(owner, margin, now);
        return now;
    }

    internal void StopWatching(int owner)
    {
        for (int i = _sentinels.Count - 1; i >= 0; i--)
        {
            if (_sentinels[i].Owner == owner)
            {
                _idle.Push(_sentinels[i]);
                _sentinels.RemoveAt(i);
            }
        }
    }

    private void AddSentinel(int owner, Signal margin, double last)
    {
        Sentinel sentinel = _idle.Count > 0 ? _idle.Pop() : new();
        sentinel.Set(owner, margin, last);
        _sentinels.Add(sentinel);
    }

    private void StopWatchingAll()
    {
        foreach (Sentinel s in _sentinels)
        {
            _idle.Push(s);
        }

        _sentinels.Clear();
    }

    /// <summary>The pending steps or the slots are others: what margins come to at their end is open again.</summary>
    private void ForgetEnds()
    {
        foreach (Sentinel s in _sentinels)
        {
            s.AtEnd = double.NaN;
        }
    }

    /// <summary>Whether every sentinel that has not come true yet is known at the nearest end of a pending step.</summary>
    private bool EndsAreKnown()
    {
        foreach (Sentinel s in _sentinels)
        {
            if (s.Last < 0 && double.IsNaN(s.AtEnd))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>The greatest margin at the nearest end of a pending step among sentinels that have not come true yet.</summary>
    private double GreatestAtEnd()
    {
        if (!EndsAreKnown())
        {
            _bank.LookAtEnds();
        }

        double greatest = double.NegativeInfinity;
        foreach (Sentinel s in _sentinels)
        {
            if (s.Last < 0)
            {
                s.AtEnd = double.IsNaN(s.AtEnd) ? s.Margin.Evaluate(_bank)[_lane] : s.AtEnd;
                greatest = s.AtEnd > greatest ? s.AtEnd : greatest;
            }
        }

        return greatest;
    }

    /// <summary>The greatest margin among sentinels that have not come true yet, from what is in view.</summary>
    private double Greatest()
    {
        double greatest = double.NegativeInfinity;
        foreach (Sentinel s in _sentinels)
        {
            if (s.Last < 0)
            {
                greatest = Math.Max(greatest, s.Margin.Evaluate(_bank)[_lane]);
            }
        }

        return greatest;
    }

    private void RememberMargins()
    {
        foreach (Sentinel s in _sentinels)
        {
            s.Last = s.Margin.Evaluate(_bank)[_lane];
        }
    }

    private void FireSentinels()
    {
        if (Now != _fireAt)
        {
            return;
        }

        _fireAt = SimTime.Never;
        TellTrue();
    }

    /// <summary>Tells those whose margin has come true: located in a step, or by a jump of a slot at this moment.</summary>
    private void TellTrue()
    {
        Resolve();
        for (int i = 0; i < _sentinels.Count; i++)
        {
            Sentinel s = _sentinels[i];
            if (s.Last >= 0 || s.Margin.Evaluate(_bank)[_lane] < 0)
            {
                continue;
            }

            if (s.Owner < 0)
            {
                s.Last = 0;
                Overseer?.CameTrue(Sentinel.OfOverseer(s.Owner));
            }
            else if (s.Owner >= Sentinel.Hazard)
            {
                s.Last = 0;
                TellHazard(s.Owner);
            }
            else if (Run is { Ended: Runs.OutcomeKind.Running })
            {
                Run.Tell(s.Owner);
            }
        }
    }
}
