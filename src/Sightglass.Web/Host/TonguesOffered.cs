using System.Collections.Immutable;
using Sightglass.Basics.Language;
using Sightglass.Book.Model;

namespace Sightglass.Web.Host;

/// <summary>The languages that a browser may choose among.</summary>
/// <param name="Offered">With what the book says in them.</param>
/// <param name="Usual">Of a browser that has chosen none.</param>
public sealed record TonguesOffered(ImmutableArray<Tongue> Offered, Tongue Usual)
{
    /// <summary>Those of a request with a book's words.</summary>
    internal static TonguesOffered Of(ServeRequest request, ClassBook book)
    {
        ImmutableArray<Tongue> offered = [.. request.Tongues.Select(t => book.Languages.GetValueOrDefault(t.Code)?.Tongue ?? t)];
        return new(offered, offered.FirstOrDefault(t => t.Code == request.Language) ?? Tongue.Usual);
    }

    /// <summary>Those that are not spoken here.</summary>
    public IEnumerable<Tongue> Others => Offered.Where(t => t.Code != Tongue.Spoken.Code);

    /// <summary>One of them by its code, or null.</summary>
    public Tongue? Find(string? code) => Offered.FirstOrDefault(t => string.Equals(t.Code, code, StringComparison.OrdinalIgnoreCase));
}
