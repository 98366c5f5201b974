using System.Collections.Immutable;
using Sightglass.Basics.Language;

namespace Sightglass.Web.Host;

/// <summary>The languages that a browser may choose among.</summary>
public sealed record TonguesOffered(ImmutableArray<Tongue> Offered)
{
    /// <summary>One of them by its code, or null.</summary>
    public Tongue? Find(string? code) => Offered.FirstOrDefault(t => string.Equals(t.Code, code, StringComparison.OrdinalIgnoreCase));
}
