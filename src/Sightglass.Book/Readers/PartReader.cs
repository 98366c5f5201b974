using System.Collections.Immutable;
using Sightglass.Book.Messages;
using Sightglass.Book.Model;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Readers;

/// <summary>Reads the sections that a vehicle has, be it the machine of the book or a car.</summary>
internal sealed class PartReader(Sections sections, ReadContext context)
{
    /// <summary>The book with the vehicle's places, items and what is true, seen and dangerous there.</summary>
    public ClassBook Into(ClassBook book, ItemBodies bodies) => book with
    {
        Places = Each("places", PlaceReader.Read),
        Legs = [.. sections.Legs.Select(n => PlaceReader.ReadLeg(n, context)).OfType<Leg>()],
        Items = bodies.Items,
        Bodies = bodies,
        Facts = Each("facts", TruthReader.ReadFact, bodies.OfUses("facts")),
        Signs = Each("signs", TruthReader.ReadSign, bodies.OfUses("signs")),
        Hazards = Each("hazards", TruthReader.ReadHazard, bodies.OfUses("hazards")),
        Ends = Each("ends", MachineReader.ReadEnd),
        Silhouettes = [.. sections["silhouettes"].Select(e => MachineReader.ReadSilhouette(e, context)).OfType<Silhouette>()],
    };

    /// <summary>The entries of a section by name; one that stands twice is reported.</summary>
    public ImmutableSortedDictionary<string, T> Each<T>(string section, Func<YamlEntry, ReadContext, T?> read, IEnumerable<YamlEntry>? ofUses = null)
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
