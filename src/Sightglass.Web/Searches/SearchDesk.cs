using System.Collections.Concurrent;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Trials.Causes;
using Sightglass.Web.Live;

namespace Sightglass.Web.Searches;

/// <summary>What was worked out of the searches of the book that is served: each once for everybody, one after the other.</summary>
/// <param name="shelf">The book.</param>
public sealed class SearchDesk(BookShelf shelf) : IDisposable
{
    private const ulong Seed = 1;

    private readonly OneByOne _one = new();
    private readonly ConcurrentDictionary<(ServedBook Of, string Search), Lazy<Task<SearchWorked>>> _worked = new();

    /// <summary>Searches in the order of the author's files.</summary>
    public IReadOnlyList<Search> All => [.. shelf.Book.Searches.Values.OrderBy(s => s.Span)];

    /// <summary>What came out of a search, of the book as it is served now; worked out when first asked for.</summary>
    public Task<SearchWorked> Of(Search search)
    {
        ArgumentNullException.ThrowIfNull(search);
        ServedBook now = shelf.Now;
        foreach ((ServedBook Of, string) old in _worked.Keys.Where(k => k.Of != now))
        {
            _worked.TryRemove(old, out _);
        }

        return _worked.GetOrAdd((now, search.Name), _ => new(() => _one.Do(() => Work(now, search)))).Value;
    }

    public void Dispose() => _one.Dispose();

    private static SearchWorked Work(ServedBook book, Search search)
    {
        DiagnosticList found = [];
        return BoundSearch.Bind(book.Fleet, search, found) is not { } bound ? new(null, 0, [.. found.Select(d => d.Message)])
            : new(CauseTable.Make(bound, Seed, out int holds), holds, []);
    }
}
