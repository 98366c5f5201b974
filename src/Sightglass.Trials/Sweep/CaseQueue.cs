namespace Sightglass.Trials.Sweep;

/// <summary>Deals out case numbers to threads.</summary>
internal sealed class CaseQueue(int cases, bool backwards)
{
    private int _taken;

    /// <summary>The next case from 0, or −1 when there is none.</summary>
    public int Take()
    {
        int n = Interlocked.Increment(ref _taken) - 1;
        return n >= cases ? -1 : backwards ? cases - 1 - n : n;
    }
}
