using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Readers;

/// <summary>Builds a book from its sections, each part by its reader.</summary>
internal sealed class BookBuilder(Sections sections, ReadContext context)
{
    public ClassBook Build(Span first, IEnumerable<SourceText> cards)
    {
        ItemBodies bodies = new(sections["items"], context.Kinds);
        ImmutableSortedDictionary<string, Item> items = bodies.Read(context);
        StartScope scope = new(items, sections["items"].Select(e => e.Name).ToHashSet(StringComparer.Ordinal));
        SituationReader situations = new(context, scope);
        return HeadReader.Read(sections, first, context) with
        {
            Places = Each("places", PlaceReader.Read),
            Legs = [.. sections.Legs.Select(n => PlaceReader.ReadLeg(n, context)).OfType<Leg>()],
            Roles = Each("roles", PeopleReader.ReadRole),
            Protections = Each("protections", PeopleReader.ReadProtection),
            Systems = Each("systems", MachineReader.ReadSystem),
            Items = items,
            Bodies = bodies,
            Facts = Each("facts", TruthReader.ReadFact),
            Signs = Each("signs", TruthReader.ReadSign),
            Hazards = Each("hazards", TruthReader.ReadHazard),
            Ends = Each("ends", MachineReader.ReadEnd),
            RoadNumbers = Each("road numbers", RoadNumberReader.Read),
            Silhouettes = [.. sections["silhouettes"].Select(e => MachineReader.ReadSilhouette(e, context)).OfType<Silhouette>()],
            Situations = Each("situations", (e, _) => situations.Read(e)),
            CardTexts = [.. cards],
        };
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
