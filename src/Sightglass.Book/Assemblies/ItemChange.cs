using Sightglass.Book.Messages;
using Sightglass.Book.Readers;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Assemblies;

/// <summary>What differs on a road number, or at one use of an assembly: keys given replace, others stay; a new item needs its kind.</summary>
internal static class ItemChange
{
    /// <summary>The word that takes an item away.</summary>
    public const string Removed = "removed";

    public static void Apply(YamlEntry change, Dictionary<string, YamlEntry> bodies, ReadContext context)
    {
        if (bodies.TryGetValue(change.Name, out YamlEntry? body))
        {
            Change(change, body, bodies, context);
        }
        else if (change.Value is YamlMap added && added.Find("kind") is not null)
        {
            bodies.Add(change.Name, change);
            NameRules.Check(change.Key, context);
        }
        else
        {
            context.AddMissing(BookMessages.NothingToChange(change.Key.Span, change.Name, context.Found.Similar(bodies.Keys)));
        }
    }

    private static void Change(YamlEntry change, YamlEntry body, Dictionary<string, YamlEntry> bodies, ReadContext context)
    {
        if (change.Value is YamlScalar { Value: Removed })
        {
            bodies.Remove(change.Name);
        }
        else if (MapReader.AsMap(change.Value, $"`{change.Name}`", context) is { } keys)
        {
            bodies[change.Name] = body with { Value = body.Value is YamlMap old ? old.ReplacedBy(keys) : keys };
        }
    }
}
