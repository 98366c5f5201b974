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
        _sentinels.Add(new(owner, margin) { Last = now });
        return now;
    }

    internal void StopWatching(int owner)
    {
        for (int i = _sentinels.Count - 1; i >= 0; i--)
        {
            if (_sentinels[i].Owner == owner)
            {
                _sentinels.RemoveAt(i);
            }
        }
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
        for (int i = 0; i < _sentinels.Count && Run is { Ended: Runs.OutcomeKind.Running }; i++)
        {
            Sentinel s = _sentinels[i];
            if (s.Last < 0 && s.Margin.Evaluate(_bank)[_lane] >= 0)
            {
                Run?.Tell(s.Owner);
            }
        }
    }
}
