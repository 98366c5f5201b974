using System.Collections.Immutable;
using Sightglass.Trials.Tries;

namespace Sightglass.Web.Trials;

/// <summary>One trial that somebody asked for on a page: how far it is, and what it came to.</summary>
/// <param name="card">Of its file, without the ending.</param>
/// <param name="situation">Where it is tried.</param>
/// <param name="cases">How many.</param>
public sealed class TrialWork(string card, string situation, int cases) : IDisposable
{
    private readonly CancellationTokenSource _stop = new();
    private int _done;

    /// <summary>Of its file, without the ending.</summary>
    public string Card => card;

    /// <summary>Where it is tried.</summary>
    public string Situation => situation;

    /// <summary>How many.</summary>
    public int Cases => cases;

    /// <summary>Cases that are over.</summary>
    public int Done => Volatile.Read(ref _done);

    /// <summary>Null until it is over.</summary>
    public TryResult? Result { get; private set; }

    /// <summary>Why it could not be run; empty where it could.</summary>
    public ImmutableArray<string> Wrong { get; private set; } = [];

    public bool IsOver { get; private set; }

    internal CancellationToken Stopped => _stop.Token;

    /// <summary>Ends it; what is done is kept.</summary>
    public void Stop() => _stop.Cancel();

    public void Dispose() => _stop.Dispose();

    internal void Tell(int done)
    {
        int was = Volatile.Read(ref _done);
        while (was < done && Interlocked.CompareExchange(ref _done, done, was) is var now && now != was)
        {
            was = now;
        }
    }

    internal void End(TryResult? result, ImmutableArray<string> wrong) => (Result, Wrong, IsOver) = (result, wrong, true);
}
