namespace Sightglass.Trials.Sweep;

/// <summary>How many cases are tried, from which seed, on how many threads.</summary>
public sealed record SweepOptions
{
    /// <summary>1…10,000,000.</summary>
    public int Cases { get; init; } = 4096;

    public ulong Seed { get; init; } = 1;

    /// <summary>The first case's number; the others follow.</summary>
    public int FirstCase { get; init; }

    /// <summary>1…64; all processors where 0.</summary>
    public int Threads { get; init; }

    /// <summary>Runs the cases from the last to the first: the outcomes are the same.</summary>
    public bool Backwards { get; init; }

    /// <summary>Told after each case, from any thread, how many are done.</summary>
    public Action<int>? Progress { get; init; }

    /// <exception cref="ArgumentOutOfRangeException">A value lies outside its range.</exception>
    public void Validate()
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(Cases, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(Cases, 10_000_000);
        ArgumentOutOfRangeException.ThrowIfNegative(FirstCase);
        ArgumentOutOfRangeException.ThrowIfNegative(Threads);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(Threads, 64);
    }
}
