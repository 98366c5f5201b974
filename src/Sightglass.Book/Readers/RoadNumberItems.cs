using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Assemblies;
using Sightglass.Book.Messages;
using Sightglass.Book.Model;

namespace Sightglass.Book.Readers;

/// <summary>What the items of one road number are and which names they use.</summary>
/// <param name="Changed">Items that are read anew or gone: what the class notes of them does not hold.</param>
internal sealed record RoadNumberItems(
    RoadNumber Number, ImmutableSortedDictionary<string, Item> Items, ImmutableArray<NameReference> References, ImmutableHashSet<string> Changed)
{
    /// <summary>How much all road numbers together may write out of assemblies, in times of what the class may.</summary>
    private const int TimesOfTheClass = 10;

    /// <summary>Reads the items of every road number that has modifications, within the limits.</summary>
    public static ImmutableDictionary<string, RoadNumberItems> ReadAll(ImmutableSortedDictionary<string, RoadNumber> numbers, ItemBodies bodies, ReadContext context)
    {
        RoadNumber[] modified = [.. numbers.Values.Where(n => n.IsModified)];
        int limit = context.Found.Limits.ItemsOfRoadNumbers;
        if ((long)modified.Length * bodies.Items.Count > limit)
        {
            context.Add(BookMessages.TooManyRoadNumbers(modified[0].Span, modified.Length, bodies.Items.Count, limit));
            return ImmutableDictionary<string, RoadNumberItems>.Empty;
        }

        ExpansionBudget budget = new(context.Found.Limits, TimesOfTheClass);
        return modified.ToImmutableDictionary(n => n.Number, n => Read(n, bodies, context, budget), StringComparer.Ordinal);
    }

    private static RoadNumberItems Read(RoadNumber number, ItemBodies bodies, ReadContext context, ExpansionBudget budget)
    {
        DiagnosticList notes = [];
        ReadContext own = context.Apart(notes);
        (ImmutableSortedDictionary<string, Item> items, ImmutableHashSet<string> changed) = bodies.ReadFor(number, own, budget);
        foreach (Diagnostic d in notes)
        {
            context.Found.AddOn($"road number {number.Number}", d);
        }

        return new(number, items, own.References, changed);
    }
}
