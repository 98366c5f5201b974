using System.Collections.Immutable;
using Sightglass.Trials.Recordings;

namespace Sightglass.Web.Recordings;

/// <summary>One comparison that somebody asked for on a page: how far it is, and what it came to.</summary>
/// <param name="rows">Rows that are run at most.</param>
/// <param name="afterSeconds">How long the machine has to settle.</param>
public sealed class RecordingWork(int rows, double afterSeconds) : IDisposable
{
    private readonly CancellationTokenSource _stop = new();
    private volatile bool _isOver;
    private int _done;

    /// <summary>Rows that are run at most.</summary>
    public int Rows => rows;

    /// <summary>How long the machine has to settle, s.</summary>
    public double AfterSeconds => afterSeconds;

    /// <summary>Rows that are done.</summary>
    public int Done => Volatile.Read(ref _done);

    /// <summary>Null until it is over, and where it could not be run.</summary>
    public RecordingReport? Report { get; private set; }

    /// <summary>Why it could not be run; empty where it could.</summary>
    public ImmutableArray<string> Wrong { get; private set; } = [];

    public bool IsOver => _isOver;

    internal CancellationToken Stopped => _stop.Token;

    /// <summary>Ends it; what is done is kept.</summary>
    public void Stop() => _stop.Cancel();

    public void Dispose() => _stop.Dispose();

    internal void Tell(int done) => Volatile.Write(ref _done, done);

    internal void End(RecordingReport? report, ImmutableArray<string> wrong)
    {
        (Report, Wrong) = (report, wrong);
        _isOver = true;
    }
}
