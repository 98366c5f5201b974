using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Messages;
using Sightglass.Book.Model;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Readers;

/// <summary>Reads what the book says about the true state: facts, signs, hazards, measures. Formulas stay text; the plant resolves their names.</summary>
internal static class TruthReader
{
    /// <summary>Of a hazard that only who couples or parts meets.</summary>
    private const string Coupling = "coupling";

    public static Fact? ReadFact(YamlEntry entry, ReadContext context)
    {
        if (MapReader.Of(entry.Value, entry.Key.Span, $"the fact `{entry.Name}`", context) is not { } map)
        {
            return null;
        }

        map.Required("is", "CONDITION");
        (string formula, Span span) = Formula(map, "is");
        Fact fact = new(entry.Name, entry.Key.Span, formula, span, map.Text("text"));
        map.Finish();
        return formula.Length == 0 ? null : fact;
    }

    public static Sign? ReadSign(YamlEntry entry, ReadContext context)
    {
        if (MapReader.Of(entry.Value, entry.Key.Span, $"the sign `{entry.Name}`", context) is not { } map)
        {
            return null;
        }

        map.Required("when", "CONDITION");
        map.Required("from", "[ PLACE ]");
        string sense = map.Choice("sense", "seen", "heard", "smelled", "felt");
        (string formula, Span span) = Formula(map, "when");
        Sign sign = new(entry.Name, entry.Key.Span, sense, formula, span, map.Names("from", NameUse.Place));
        map.Finish();
        return formula.Length == 0 ? null : sign;
    }

    public static Hazard? ReadHazard(YamlEntry entry, ReadContext context)
    {
        if (MapReader.Of(entry.Value, entry.Key.Span, $"the hazard `{entry.Name}`", context) is not { } map)
        {
            return null;
        }

        (string formula, Span span) = Formula(map, "when");
        Caution? caution = CautionReader.Among(map, entry.Key.Span, context);
        ImmutableArray<string> items = map.Names("items", NameUse.Item);
        string bites = map.Choice("bites", "being there", "touching", Coupling);
        Hazard hazard = new(
            entry.Name,
            entry.Key.Span,
            map.Names("places", NameUse.Place),
            bites == Coupling ? [] : items,
            formula.Length == 0 ? null : formula,
            span,
            map.Name("protection", NameUse.Protection),
            caution ?? new(SignalWord.Caution, "", entry.Key.Span))
        {
            OnTouch = bites != "being there",
            Ends = bites == Coupling ? items : [],
        };
        map.Finish();
        if (hazard.Places.Length + items.Length == 0)
        {
            context.Add(BookMessages.MissingKey(entry.Key.Span, "places", map.Owner, "[ PLACE ]"));
        }

        return hazard;
    }

    public static Measure? ReadMeasure(YamlEntry entry, ReadContext context) =>
        Values.Scalar(entry.Value, $"the measure `{entry.Name}`", context) is { } s ? new(entry.Name, entry.Key.Span, s.Value.Trim(), Values.Content(s)) : null;

    private static (string Formula, Span Span) Formula(MapReader map, string key) =>
        map.Scalar(key) is { } s ? (s.Value.Trim(), Values.Content(s)) : ("", default);
}
