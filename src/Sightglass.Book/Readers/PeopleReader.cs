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

        map.Required("asked of", "ROLE");
        Protection protection = new(entry.Name, entry.Key.Span, map.Name("asked of", NameUse.Role) ?? "", map.Text("text"));
        map.Finish();
        return protection;
    }
}
