using System.Collections.Immutable;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Messages;
using Sightglass.Book.Model;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Readers;

/// <summary>Reads roles and protections.</summary>
internal static class PeopleReader
{
    /// <summary>An ordinary walk on ballast and steps, m/s; common practice, no source.</summary>
    private const double Walk = 1.3;

    /// <summary>From seeing to beginning to act, s; common practice, no source.</summary>
    private const double Reaction = 2;

    public static Role? ReadRole(YamlEntry entry, ReadContext context)
    {
        if (MapReader.Of(entry.Value, entry.Key.Span, $"the role `{entry.Name}`", context) is not { } map)
        {
            return null;
        }

        double walk = map.Positive("walks", Dimension.Speed, Walk);
        double reaction = map.Number("reacts in", Dimension.Second, Reaction);
        if (reaction < 0)
        {
            context.Add(BookMessages.OutOfRange(map.SpanOf("reacts in"), "`reacts in`", map.Text("reacts in"), "0 s or more"));
        }

        Role role = new(entry.Name, entry.Key.Span, walk, reaction, map.Text("text"), map.Names("goes to", NameUse.Place)) { IsBound = map.Has("goes to") };
        map.Finish();
        return role;
    }

    public static Protection? ReadProtection(YamlEntry entry, ReadContext context)
    {
        if (MapReader.Of(entry.Value, entry.Key.Span, $"the protection `{entry.Name}`", context) is not { } map)
        {
            return null;
        }

        ImmutableArray<string> places = map.Names("set at", NameUse.Place);
        ImmutableArray<string> locked = map.Names("locks", NameUse.Item);
        ImmutableArray<string> chocked = map.Names("chocks", NameUse.Item);
        ProtectionSort sort = !places.IsEmpty ? ProtectionSort.SetAt : !locked.IsEmpty ? ProtectionSort.Locks : !chocked.IsEmpty ? ProtectionSort.Chocks : ProtectionSort.Asked;
        string[] ways = [.. new[] { "asked of", "set at", "locks", "chocks" }.Where(map.Has)];
        if (ways.Length == 0)
        {
            map.Required("asked of", "ROLE");
        }

        foreach (string second in ways.Skip(1))
        {
            context.Add(BookMessages.OneOfKeys(map.KeySpan(second), second, ways[0], map.Owner));
        }

        Protection protection = new(entry.Name, entry.Key.Span, sort, map.Name("asked of", NameUse.Role) ?? "", [.. places, .. locked, .. chocked], map.Text("text")) { Needs = map.Names("needs", NameUse.Item) };
        map.Finish();
        return protection;
    }
}
