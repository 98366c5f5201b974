using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Readers;

/// <summary>Builds a book from its sections, each part by its reader.</summary>
internal sealed class BookBuilder(Sections sections, ReadContext context)
{
    private readonly HashSet<string> _declared = sections["items"].Select(e => e.Name).ToHashSet(StringComparer.Ordinal);

    /// <summary>The items of road numbers that have modifications.</summary>
    public ImmutableDictionary<string, RoadNumberItems> RoadNumberItems { get; private set; } = ImmutableDictionary<string, RoadNumberItems>.Empty;

    public ClassBook Build(Span first, IEnumerable<SourceText> cards)
    {
        ItemBodies bodies = new(sections["items"], context);
        ImmutableSortedDictionary<string, RoadNumber> numbers = Each("road numbers", RoadNumberReader.Read);
        RoadNumberItems = Readers.RoadNumberItems.ReadAll(numbers, bodies, context);
        return HeadReader.Read(sections, first, context) with
        {
            Places = Each("places", PlaceReader.Read),
            Legs = [.. sections.Legs.Select(n => PlaceReader.ReadLeg(n, context)).OfType<Leg>()],
            Roles = Each("roles", PeopleReader.ReadRole),
            Protections = Each("protections", PeopleReader.ReadProtection),
            Systems = Each("systems", MachineReader.ReadSystem),
            Items = bodies.Items,
            Bodies = bodies,
            Facts = Each("facts", TruthReader.ReadFact),
            Signs = Each("signs", TruthReader.ReadSign),
            Hazards = Each("hazards", TruthReader.ReadHazard),
            Ends = Each("ends", MachineReader.ReadEnd),
            RoadNumbers = numbers,
            Silhouettes = [.. sections["silhouettes"].Select(e => MachineReader.ReadSilhouette(e, context)).OfType<Silhouette>()],
            Situations = Each("situations", (e, _) => new SituationReader(context, ScopeOf(e, bodies)).Read(e)),
            CardTexts = [.. cards],
        };
    }

    /// <summary>A situation on a road number sees its items, any other those of the class.</summary>
    private StartScope ScopeOf(YamlEntry situation, ItemBodies bodies)
    {
        string? number = ((situation.Value as YamlMap)?.Find("road number")?.Value as YamlScalar)?.Value;
        RoadNumberItems? own = number is null ? null : RoadNumberItems.GetValueOrDefault(number);
        return new(own?.Items ?? bodies.Items, _declared);
    }

    private ImmutableSortedDictionary<string, T> Each<T>(string section, Func<YamlEntry, ReadContext, T?> read)
        where T : class
    {
        var found = ImmutableSortedDictionary.CreateBuilder<string, T>(StringComparer.Ordinal);
        foreach (YamlEntry e in sections[section])
        {
            if (read(e, context) is { } part)
            {
                found[e.Name] = part;
            }
        }

        return found.ToImmutable();
    }
}
