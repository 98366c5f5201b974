using System.Collections.Immutable;
using Sightglass.Basics.Language;
using Sightglass.Web.Live;

namespace Sightglass.Web.Host;

/// <summary>The languages that a browser may choose among, with what the book that is served now says in them.</summary>
/// <param name="shelf">The book.</param>
/// <param name="tongues">The program's.</param>
/// <param name="usual">Code of that of a browser that has chosen none.</param>
public sealed class TonguesOffered(BookShelf shelf, ImmutableArray<Tongue> tongues, string usual)
{
    private volatile Said? _said;

    public ImmutableArray<Tongue> Offered
    {
        get
        {
            ServedBook book = shelf.Now;
            if (_said is not { } said || !ReferenceEquals(said.Of, book))
            {
                _said = said = new(book, [.. tongues.Select(t => book.Book.Languages.GetValueOrDefault(t.Code)?.Tongue ?? t)]);
            }

            return said.Tongues;
        }
    }

    /// <summary>Of a browser that has chosen none.</summary>
    public Tongue Usual => Offered.FirstOrDefault(t => t.Code == usual) ?? Tongue.Usual;

    /// <summary>Those that are not spoken here.</summary>
    public IEnumerable<Tongue> Others => Offered.Where(t => t.Code != Tongue.Spoken.Code);

    /// <summary>One of them by its code, or null.</summary>
    public Tongue? Find(string? code) => Offered.FirstOrDefault(t => string.Equals(t.Code, code, StringComparison.OrdinalIgnoreCase));

    private sealed record Said(ServedBook Of, ImmutableArray<Tongue> Tongues);
}
