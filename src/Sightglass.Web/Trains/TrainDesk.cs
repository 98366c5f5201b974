using System.Collections.Concurrent;
using Sightglass.Book.Consists;
using Sightglass.Trials.Consists;
using Sightglass.Web.Live;

namespace Sightglass.Web.Trains;

/// <summary>Checks of trains of the book that is served: each once for everybody, one after the other.</summary>
/// <param name="shelf">The book.</param>
public sealed class TrainDesk(BookShelf shelf) : IDisposable
{
    /// <summary>Kept at most; then all are forgotten.</summary>
    private const int Most = 64;

    private readonly OneByOne _one = new();
    private readonly ConcurrentDictionary<(ServedBook Of, string Train), Lazy<Task<TrainCheckResult>>> _checked = new();

    /// <summary>What came out of a check, by the book as it is served now; worked out when first asked for.</summary>
    public Task<TrainCheckResult> Of(Consist consist)
    {
        ServedBook now = shelf.Now;
        if (_checked.Count >= Most)
        {
            _checked.Clear();
        }

        foreach ((ServedBook Of, string) old in _checked.Keys.Where(k => k.Of != now))
        {
            _checked.TryRemove(old, out _);
        }

        return _checked.GetOrAdd((now, ConsistText.Of(consist)), _ => new(() => _one.Do(() => TrainCheck.Of(now.Book, consist)))).Value;
    }

    public void Dispose() => _one.Dispose();
}
