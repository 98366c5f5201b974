namespace Sightglass.Web.Live;

/// <summary>Looks at the files of the book that is served every other second. Looking is asked of the files and not of the system that holds them: it works on a shared drive, too.</summary>
public sealed class ShelfWatch : IDisposable
{
    private static readonly TimeSpan s_beat = TimeSpan.FromSeconds(2);

    private readonly BookShelf _shelf;
    private readonly ITimer _timer;
    private int _looking;

    /// <param name="shelf">The book.</param>
    /// <param name="clock">The clock on the wall.</param>
    public ShelfWatch(BookShelf shelf, TimeProvider clock)
    {
        ArgumentNullException.ThrowIfNull(clock);
        _shelf = shelf;
        _timer = clock.CreateTimer(_ => Beat(), null, s_beat, s_beat);
    }

    public void Dispose() => _timer.Dispose();

    /// <summary>A beat that comes while the last one still reads is left out.</summary>
    private void Beat()
    {
        if (Interlocked.Exchange(ref _looking, 1) != 0)
        {
            return;
        }

        try
        {
            _shelf.Look();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // Held by whoever writes it, or the drive is away: the next beat looks again.
        }
        finally
        {
            Volatile.Write(ref _looking, 0);
        }
    }
}
