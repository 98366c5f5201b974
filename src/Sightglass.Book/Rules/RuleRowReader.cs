using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Formulas;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Messages;
using Sightglass.Book.Readers;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Rules;

/// <summary>Reads rows. Formulas are checked against the set's quantities: a row that is read can be worked out.</summary>
internal sealed class RuleRowReader(NameTable names, string edition, ReadContext context)
{
    private const int LongestParagraph = 60;

    private static readonly (string Key, RuleOutcome Outcome)[] s_outcomes =
        [("average fall of", RuleOutcome.AverageFall), ("average rise of", RuleOutcome.AverageRise), ("least of", RuleOutcome.Least), ("greatest of", RuleOutcome.Greatest)];

    /// <summary>The keys of a test of which one says what is made of the values.</summary>
    public static IEnumerable<string> OutcomeKeys => s_outcomes.Select(o => o.Key);

    public RuleRow? Read(YamlEntry entry)
    {
        if (!IsParagraph(entry.Name))
        {
            context.Add(RuleMessages.BadParagraph(entry.Key.Span, entry.Name));
        }

        if (MapReader.Of(entry.Value, entry.Key.Span, $"the row `{entry.Name}`", context) is not { } map)
        {
            return null;
        }

        map.Required("title", "Main reservoir safety valve");
        map.Required("limit", "Not more than 15 psi above the working pressure.");
        map.Required("confidence", "high");
        RuleTest? test = map.Take("test") is { } node ? Test(node, map) : null;
        Formula? value = Formula(map, "value", FormulaKind.AnyValue);
        (Dimension? measured, Unit? unit) = test is not null ? Measured(test) : (value?.Dimension, UnitOf(value));
        FormulaKind limit = measured is { } d ? FormulaKind.Value(d) : FormulaKind.AnyValue;
        RuleRow row = new()
        {
            Paragraph = entry.Name,
            Span = entry.Key.Span,
            Edition = map.Text("edition", edition),
            Title = map.Text("title"),
            Limit = map.Text("limit"),
            Condition = map.Text("condition"),
            Method = map.Text("method"),
            Reading = map.Text("our reading"),
            Confidence = map.Choice("confidence", "high", "medium") == "high" ? RuleConfidence.High : RuleConfidence.Medium,
            Test = test,
            Value = value,
            AtLeast = Formula(map, "at least", limit),
            AtMost = Formula(map, "at most", limit),
            Holds = Formula(map, "holds", FormulaKind.Condition),
            Unit = unit ?? (measured is { } known ? UnitTable.SiOf(known) : UnitTable.One),
        };
        CheckParts(map);
        map.Finish();
        return row;
    }

    private void CheckParts(MapReader map)
    {
        string[] sources = [.. new[] { "value", "test", "holds" }.Where(map.Has)];
        string[] limits = [.. new[] { "at least", "at most" }.Where(map.Has)];
        if (sources.Length > 1)
        {
            context.Add(RuleMessages.Beside(map.KeySpan(sources[1]), sources[1], sources[0]));
        }
        else if (sources is ["value" or "test"] && limits.Length == 0)
        {
            context.Add(RuleMessages.NoLimit(map.KeySpan(sources[0]), sources[0]));
        }
        else if (sources is [] or ["holds"] && limits.Length > 0)
        {
            context.Add(RuleMessages.NothingToLimit(map.KeySpan(limits[0]), limits[0]));
        }
    }

    private RuleTest? Test(YamlNode node, MapReader row)
    {
        if (MapReader.Of(node, row.KeySpan("test"), "the test", context) is not { } map)
        {
            return null;
        }

        bool whole = map.Required("begins when", "CONDITION") & map.Required("lasts", "3 min");
        Formula? begins = Formula(map, "begins when", FormulaKind.Condition);
        Formula? onlyWhile = Formula(map, "only while", FormulaKind.Condition);
        double settles = map.NumberOrNull("settles", Dimension.Second) ?? 0;
        double lasts = map.Positive("lasts", Dimension.Second, 1);
        if (settles < 0)
        {
            context.Add(BookMessages.OutOfRange(map.SpanOf("settles"), "`settles`", map.Text("settles"), "0 or more"));
        }

        (string Key, RuleOutcome Outcome)[] given = [.. s_outcomes.Where(o => map.Has(o.Key))];
        Formula? followed = null;
        foreach ((string key, _) in s_outcomes)
        {
            followed = Formula(map, key, FormulaKind.AnyValue) ?? followed;
        }

        if (given.Length != 1)
        {
            context.Add(RuleMessages.Outcomes(map.OwnerSpan, string.Join(", ", OutcomeKeys.Select(k => $"`{k}`"))));
        }

        map.Finish();
        return whole && begins is not null && followed is not null && given.Length == 1 ? new(begins, onlyWhile, settles, lasts, given[0].Outcome, followed) : null;
    }

    /// <summary>What the number of a test measures, and in what it is shown: a rate is shown by the minute.</summary>
    private static (Dimension? Measured, Unit? Unit) Measured(RuleTest test)
    {
        Unit unit = UnitOf(test.Of) ?? UnitTable.SiOf(test.Of.Dimension);
        return test.Outcome is RuleOutcome.Least or RuleOutcome.Greatest
            ? (test.Of.Dimension, unit)
            : (test.Of.Dimension / Dimension.Second, UnitTable.Find($"{unit.Symbol}/min"));
    }

    /// <summary>The unit of the first quantity that a formula is made of, where the whole measures the same.</summary>
    private static Unit? UnitOf(Formula? formula) => formula?.NamesUsed.Select(n => n.PreferredUnit).FirstOrDefault(u => u?.Dimension == formula.Dimension);

    private Formula? Formula(MapReader map, string key, FormulaKind kind)
    {
        if (map.Scalar(key) is not { } s)
        {
            return null;
        }

        DiagnosticList notes = [];
        Formula? formula = FormulaParser.Parse(s.Value.Trim(), Values.Content(s), names, notes, kind);
        context.Found.AddRange(notes);
        return formula;
    }

    private static bool IsParagraph(string text) =>
        text.Length is > 0 and <= LongestParagraph && text.Trim() == text && text.All(c => char.IsAsciiLetterOrDigit(c) || c is ' ' or '.' or '-' or ',' or '(' or ')' or '§');
}
