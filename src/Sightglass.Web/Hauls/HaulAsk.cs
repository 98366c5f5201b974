using Microsoft.AspNetCore.WebUtilities;
using Microsoft.Extensions.Primitives;
using Sightglass.Book.Model;
using Sightglass.World.Hauls;

namespace Sightglass.Web.Hauls;

/// <summary>What an address asks of a route: what was typed, so that it can be sent to somebody or kept.</summary>
/// <param name="Typed">By input; what is not there was not said.</param>
/// <param name="Sands">Whether it sands.</param>
internal sealed record HaulAsk(IReadOnlyDictionary<HaulInput, string> Typed, bool Sands)
{
    /// <summary>Where the list of routes is.</summary>
    public const string Root = "routes";

    private const string Sand = "sand";

    private const string None = "no";

    private static readonly (HaulInput Input, string Key)[] s_keys =
    [
        (HaulInput.Train, "train"), (HaulInput.Rail, "rail"), (HaulInput.Dead, "dead"), (HaulInput.HeadEnd, "head-end"), (HaulInput.Fill, "fuel"), (HaulInput.Sets, "set"), (HaulInput.Margin, "margin"), (HaulInput.StopsAt, "stop-at"),
    ];

    /// <summary>Where a route is, without anything said.</summary>
    public static string AddressOf(Route route) => $"{Root}/{Uri.EscapeDataString(route.Name)}";

    /// <summary>Reads an address; null where it says nothing.</summary>
    public static HaulAsk? Of(Uri address)
    {
        Dictionary<string, StringValues> query = QueryHelpers.ParseQuery(address.Query);
        Dictionary<HaulInput, string> typed = s_keys.Where(k => query.ContainsKey(k.Key)).ToDictionary(k => k.Input, k => query[k.Key].ToString());
        return typed.Count == 0 && !query.ContainsKey(Sand) ? null : new(typed, query.GetValueOrDefault(Sand) != None);
    }

    /// <summary>The address that says this.</summary>
    public string Address(Route route)
    {
        IEnumerable<KeyValuePair<string, string?>> said = s_keys.Where(k => Typed.GetValueOrDefault(k.Input) is { Length: > 0 }).Select(k => KeyValuePair.Create(k.Key, (string?)Typed[k.Input]));
        return QueryHelpers.AddQueryString(AddressOf(route), Sands ? said : said.Append(KeyValuePair.Create(Sand, (string?)None)));
    }
}
