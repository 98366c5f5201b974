using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Messages;
using Sightglass.Book.Model;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Readers;

/// <summary>Builds a book from its sections, each part by its reader.</summary>
internal sealed class BookBuilder(Sections sections, ReadContext context)
{
    /// <summary>The items of road numbers that have modifications.</summary>
    public ImmutableDictionary<string, RoadNumberItems> RoadNumberItems { get; private set; } = ImmutableDictionary<string, RoadNumberItems>.Empty;

    public ClassBook Build(Span first, IEnumerable<SourceText> cards)
    {
        ItemBodies bodies = new(sections["items"], sections["assemblies"], context);
        HashSet<string> declared = bodies.Names.ToHashSet(StringComparer.Ordinal);
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
            Facts = Each("facts", TruthReader.ReadFact, bodies.OfUses("facts")),
            Signs = Each("signs", TruthReader.ReadSign, bodies.OfUses("signs")),
            Hazards = Each("hazards", TruthReader.ReadHazard, bodies.OfUses("hazards")),
            Measures = Each("measures", TruthReader.ReadMeasure),
            Ends = Each("ends", MachineReader.ReadEnd),
            RoadNumbers = numbers,
            Silhouettes = [.. sections["silhouettes"].Select(e => MachineReader.ReadSilhouette(e, context)).OfType<Silhouette>()],
            Situations = Each("situations", (e, _) => new SituationReader(context, ScopeOf(e, bodies, declared)).Read(e)),
            CardTexts = [.. cards],
        };
    }

    /// <summary>A situation on road numbers sees the items of the first of them, any other those of the class. What the others lack is told where it is bound to their plants.</summary>
    private StartScope ScopeOf(YamlEntry situation, ItemBodies bodies, HashSet<string> declared)
    {
        YamlNode? named = (situation.Value as YamlMap)?.Find("road number")?.Value;
        string? number = ((named is YamlList list ? list.Items.FirstOrDefault() : named) as YamlScalar)?.Value;
        RoadNumberItems? own = number is null ? null : RoadNumberItems.GetValueOrDefault(number);
        return new(own?.Items ?? bodies.Items, declared);
    }

    private ImmutableSortedDictionary<string, T> Each<T>(string section, Func<YamlEntry, ReadContext, T?> read, IEnumerable<YamlEntry>? ofUses = null)
        where T : class
    {
        var found = ImmutableSortedDictionary.CreateBuilder<string, T>(StringComparer.Ordinal);
        Dictionary<string, YamlEntry> first = new(StringComparer.Ordinal);
        foreach (YamlEntry e in sections[section].Concat(ofUses ?? []))
        {
            if (!first.TryAdd(e.Name, e))
            {
                context.Add(BookMessages.DeclaredTwice(e.Key.Span, Sections.NounOf(section), e.Name, first[e.Name].Key.Span));
            }
            else if (read(e, context) is { } part)
            {
                found[e.Name] = part;
            }
        }

        return found.ToImmutable();
    }
}
