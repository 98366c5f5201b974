using System.Collections.Immutable;
using System.Globalization;
using Sightglass.Basics.Language;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Cards.Story;

namespace Sightglass.Training.Differences;

/// <summary>What is new, gone, moved, works, shows or is built otherwise on one machine for people who know another: two classes, two road numbers, two editions of a book.</summary>
public static class MachineComparison
{
    /// <summary>Items nearer than this stand where they stood, m.</summary>
    private const double Same = 0.3;

    /// <summary>The gravest first, then in the order of the book.</summary>
    /// <param name="known">What the people know.</param>
    /// <param name="other">What they come to.</param>
    public static ImmutableArray<ItemDifference> Of(ClassBook known, ClassBook other)
    {
        ArgumentNullException.ThrowIfNull(known);
        ArgumentNullException.ThrowIfNull(other);
        IEnumerable<ItemDifference> gone = known.ItemsInOrder.Where(i => IsMet(i) && !other.Items.ContainsKey(i.Name)).Select(i => new ItemDifference(i, null, DifferenceSort.Gone, Renamed(i, other, known)));
        IEnumerable<ItemDifference> rest = other.ItemsInOrder.Where(IsMet).Select(i => known.Items.TryGetValue(i.Name, out Item? before) ? Between(before, i) : new(null, i, DifferenceSort.New, Renamed(i, known, other))).OfType<ItemDifference>();
        return [.. gone.Concat(rest).OrderBy(d => d.Sort)];
    }

    /// <summary>Whether people meet it: what has no place is inside something else.</summary>
    private static bool IsMet(Item item) => !item.Places.IsEmpty;

    /// <summary>An item of the same kind at the same place that only one of the two has may be the same under another name.</summary>
    private static ImmutableArray<Change> Renamed(Item item, ClassBook others, ClassBook own) =>
        others.ItemsInOrder.FirstOrDefault(o => o.Kind.Name == item.Kind.Name && !own.Items.ContainsKey(o.Name) && Distance(o, item) < Same) is { } same
            ? [new("perhaps the same as", "", Say.Book(same.Name))]
            : [];

    private static ItemDifference? Between(Item before, Item after)
    {
        Change[] works = [.. Works(before, after)];
        Change[] shows = [.. Shows(before, after)];
        Change[] moved = [.. Moved(before, after)];
        Change[] label = [.. Changed(() => [("label", Say.Book(before.Label), Say.Book(after.Label))])];
        Change[] built = [.. Built(before, after)];
        ImmutableArray<Change> all = [.. works, .. shows, .. moved, .. label, .. built];
        return all.IsEmpty
            ? null
            : new(before, after, Gravest(), all);

        DifferenceSort Gravest() => works.Length > 0 ? DifferenceSort.WorksOtherwise
            : shows.Length > 0 ? DifferenceSort.ShowsOtherwise
            : moved.Length > 0 ? DifferenceSort.Moved
            : label.Length > 0 ? DifferenceSort.LabelledOtherwise
            : DifferenceSort.BuiltOtherwise;
    }

    private static IEnumerable<Change> Works(Item before, Item after) =>
        Changed(() =>
        [
            ("positions", Words(before.Positions), Words(after.Positions)),
            ("usual position", PositionWords.Of(before.Name, before.UsualPosition ?? ""), PositionWords.Of(after.Name, after.UsualPosition ?? "")),
            ("who may", List(before.Authority?.Who ?? []), List(after.Authority?.Who ?? [])),
            ("permission of", Say.Book(before.Authority?.Permission ?? ""), Say.Book(after.Authority?.Permission ?? "")),
            ("told", List(before.Authority?.Told ?? []), List(after.Authority?.Told ?? [])),
        ]);

    private static IEnumerable<Change> Shows(Item before, Item after) =>
        Changed(() =>
        [
            ("shows", before.Reading?.Formula ?? "", after.Reading?.Formula ?? ""),
            ("scale", Scale(before.Reading), Scale(after.Reading)),
            ("read to", Step(before.Reading), Step(after.Reading)),
            ("normal range", Normal(before.Reading), Normal(after.Reading)),
        ]);

    private static IEnumerable<Change> Moved(Item before, Item after)
    {
        if (!before.Places.SequenceEqual(after.Places, StringComparer.Ordinal))
        {
            yield return new("places", List(before.Places), List(after.Places));
        }

        if (Distance(before, after) is > Same and var metres && double.IsFinite(metres))
        {
            yield return new("position", At(before), At(after));
        }
    }

    private static IEnumerable<Change> Built(Item before, Item after)
    {
        IEnumerable<Change> first = Changed(() =>
        [
            ("kind", Say.Word(before.Kind.Name), Say.Word(after.Kind.Name)),
            ("from", End(before.From), End(after.From)),
            ("to", End(before.To), End(after.To)),
        ]);
        IEnumerable<string> names = before.Parameters.Keys.Union(after.Parameters.Keys, StringComparer.Ordinal).Order(StringComparer.Ordinal);
        IEnumerable<string> ports = before.Ports.Keys.Union(after.Ports.Keys, StringComparer.Ordinal).Order(StringComparer.Ordinal);
        return first.Concat(Changed(() => [.. names.Select(n => (n, Value(before, n), Value(after, n))), .. ports.Select(p => (p, Height(before, p), Height(after, p)))]));
    }

    /// <summary>What differs as the author wrote it, said in the language that is spoken: two words of one may be one word of the other.</summary>
    private static IEnumerable<Change> Changed(Func<(string What, string Was, string Is)[]> pairs)
    {
        (string What, string Was, string Is)[] said = pairs();
        using (Tongue.English.Speak())
        {
            (string What, string Was, string Is)[] written = pairs();
            return [.. said.Where((_, i) => written[i].Was != written[i].Is).Select(p => new Change(p.What, p.Was, p.Is))];
        }
    }

    private static string Value(Item item, string name)
    {
        if (!item.Parameters.TryGetValue(name, out ParameterValue? value))
        {
            return "";
        }

        KindParameter? parameter = item.Kind.Parameters.FirstOrDefault(p => p.Name == name);
        return value.Unit is { } unit ? QuantityFormat.Text(value.Number, unit)
            : !value.Pins.IsDefaultOrEmpty ? string.Join(", ", value.Pins.Zip(value.Names, (p, n) => FormattableString.Invariant($"{p}: {n}")))
            : !value.Names.IsDefaultOrEmpty ? List(value.Names)
            : !value.ByPosition.IsEmpty ? string.Join(", ", value.ByPosition.Select(p => $"{Say.Word(p.Key)} {Number(p.Value)}"))
            : !value.Rows.IsDefaultOrEmpty ? string.Join("; ", value.Rows.Select(r => string.Join(' ', r.Select(Number))))
            : value.Text.Length > 0 || parameter is null ? Say.Word(value.Text) : Number(value.Number);
    }

    private static string Height(Item item, string port) => item.Ports.TryGetValue(port, out Port? at) ? Say.With($"{QuantityFormat.Text(at.Height, UnitTable.Get("mm"))} above the floor") : "";

    private static string Scale(Reading? reading) => reading is null ? "" : $"{QuantityFormat.Text(reading.Minimum, reading.Unit)} … {QuantityFormat.Text(reading.Maximum, reading.Unit)}";

    private static string Step(Reading? reading) => reading is null ? "" : QuantityFormat.Text(reading.Resolution, reading.Unit);

    private static string Normal(Reading? reading) =>
        reading is { NormalFrom: { } from, NormalTo: { } to } ? $"{QuantityFormat.Text(from, reading.Unit)} … {QuantityFormat.Text(to, reading.Unit)}" : "";

    private static double Distance(Item a, Item b) => a.Position is { } p && b.Position is { } q
        ? Math.Sqrt(((p.X - q.X) * (p.X - q.X)) + ((p.Y - q.Y) * (p.Y - q.Y)) + ((p.Z - q.Z) * (p.Z - q.Z)))
        : double.PositiveInfinity;

    private static string End(PortReference? end) => end is null ? "" : end.Port is { } port ? $"{Say.Book(end.Item)}, {Say.Word(port)}" : Say.Book(end.Item);

    private static string At(Item item) => item.Position is { } p ? string.Create(CultureInfo.InvariantCulture, $"x {p.X:0.0} m, y {p.Y:0.0} m, z {p.Z:0.0} m") : "";

    private static string Number(double value) => value.ToString("0.####", CultureInfo.InvariantCulture);

    private static string List(ImmutableArray<string> names) => names.IsDefaultOrEmpty ? "" : Say.Names(names);

    private static string Words(ImmutableArray<string> positions) => string.Join(", ", positions.Select(Say.Word));
}
