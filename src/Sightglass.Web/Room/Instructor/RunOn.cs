using Sightglass.Basics.Language;
using Sightglass.Basics.Time;

namespace Sightglass.Web.Room.Instructor;

/// <summary>A drill that runs on at once, off the page, until it has come to where it was to come to or is stopped; it is held there.</summary>
public sealed class RunOn : IDisposable
{
    private readonly CancellationTokenSource _stop = new();

    private RunOn(DrillSession session) => Session = session;

    public DrillSession Session { get; }

    /// <summary>Whether it still runs.</summary>
    public bool Goes => !Ended.IsCompleted;

    /// <summary>What came of it, once it has come to rest.</summary>
    public Task<string> Ended { get; private set; } = Task.FromResult("");

    /// <param name="session">Which.</param>
    /// <param name="seconds">At most so long, simulated.</param>
    /// <param name="until">Until this is so; null: for all of the seconds.</param>
    public static RunOn Begin(DrillSession session, double seconds, Func<World.World, bool>? until)
    {
        ArgumentNullException.ThrowIfNull(session);
        RunOn run = new(session);
        CancellationToken stop = run._stop.Token;
        Tongue tongue = Tongue.Spoken;
        run.Ended = Task.Run(() =>
        {
            using (tongue.Speak())
            {
                return run.Go(seconds, until, stop);
            }
        });
        return run;
    }

    public void Stop() => _stop.Cancel();

    public void Dispose()
    {
        _stop.Cancel();
        _stop.Dispose();
    }

    private string Go(double seconds, Func<World.World, bool>? until, CancellationToken stop)
    {
        Session.Hold(HoldReason.One);
        Session.Release(HoldReason.Brief);
        bool isSo = Session.Forward(Session.Current.Now + SimTime.FromSeconds(seconds), until, stop);
        string at = SeatRows.ClockOf(Session.Current.Now);
        return stop.IsCancellationRequested ? Say.With($"Stopped at {at}, held.")
            : isSo ? Say.With($"It came to be so at {at}, held.")
            : Session.Current.IsOver ? Say.With($"The drill was over at {at}.")
            : until is null ? Say.With($"Run on to {at}, held.")
            : Say.With($"It had not come to be so by {at}, held.");
    }
}
