using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Book.Readers;

namespace Sightglass.Book.Trains;

/// <summary>
/// The mistakes that can be made between two vehicles: for each two lines whose hoses can be taken for each other at either of the facing ends, and which both ends join, one item whose fault
/// joins them crosswise, and the sign by which whoever stands there sees it.
/// </summary>
internal static class Crossings
{
    /// <param name="rear">The end of the vehicle ahead.</param>
    /// <param name="front">The end of the vehicle behind.</param>
    /// <param name="couplings">Those between the two, by line.</param>
    /// <param name="kinds">Where the kind of the mistake is looked up.</param>
    /// <param name="where">Such as <c>at the rear</c>.</param>
    public static IEnumerable<(Item Pair, Sign Seen)> Of(CouplingEnd rear, CouplingEnd front, IReadOnlyDictionary<string, Item> couplings, KindCatalog? kinds, string where)
    {
        HashSet<(string, string)> made = [];
        foreach ((string line, string other, Span span) in rear.Mistaken.Concat(front.Mistaken))
        {
            if (line != other && couplings.TryGetValue(line, out Item? one) && couplings.TryGetValue(other, out Item? two)
                && one.Kind.CrossedBy is { } name && two.Kind.CrossedBy == name && kinds?.Find(name) is { } kind
                && made.Add((line, other)) && made.Add((other, line)))
            {
                Item pair = Pair(kind, $"{line} and {other} hoses", where, span, one, two);
                yield return (pair, new Sign($"{pair.Name} are seen crossed", span, "seen", $"crossed of {pair.Name}", span, pair.Places));
            }
        }
    }

    private static Item Pair(KindSheet kind, string label, string where, Span span, Item one, Item two) => new()
    {
        Name = $"{label} {where}",
        Span = span,
        Vehicle = one.Vehicle,
        Kind = kind,
        System = one.System,
        Position = one.Position,
        Places = [.. one.Places.Union(two.Places)],
        Label = label,
        Purpose = kind.Purpose,
        Normal = "Each joined to its like.",
        Cautions = one.Cautions.IsEmpty ? two.Cautions : one.Cautions,
        Parameters = ParameterTexts.Defaults(kind).SetItem(kind.Parameters.First(p => p.Type == ParameterType.Items).Name, new(span) { Names = [one.Name, two.Name] }),
    };
}
