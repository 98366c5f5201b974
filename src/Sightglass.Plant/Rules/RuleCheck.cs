using System.Collections.Immutable;
using Sightglass.Basics.Formulas;
using Sightglass.Book.Rules;

namespace Sightglass.Plant.Rules;

/// <summary>Holds a book against published rules: every row with its verdict, and the number of the book beside the limit.</summary>
public static class RuleCheck
{
    /// <summary>The findings of a book, in the order of the rows.</summary>
    public static ImmutableArray<RuleFinding> Of(RuleBinding binding)
    {
        ArgumentNullException.ThrowIfNull(binding);
        double[] constants = binding.Constants();
        return [.. binding.Rules.Rows.Select(r => Of(r, binding, constants))];
    }

    private static RuleFinding Of(RuleRow row, RuleBinding binding, double[] constants)
    {
        if (!row.IsOfTheMachine)
        {
            return RuleFinding.Untold(row, RuleWords.OfPeople);
        }

        if (binding.Unmapped(row) is { IsEmpty: false } unmapped)
        {
            return RuleFinding.Untold(row, RuleWords.Unmapped(unmapped));
        }

        if (row.Test is { } test)
        {
            return RuleFinding.Untold(row, RuleWords.NeedsRun([.. test.Of.NamesUsed.Select(n => n.Name)]));
        }

        return binding.Running(row) is { IsEmpty: false } running ? RuleFinding.Untold(row, RuleWords.NeedsRun(running)) : Judged(row, Evaluated(row.Value, constants), constants, $"");
    }

    /// <summary>The verdict on a value; limits are worked out of the same values.</summary>
    internal static RuleFinding Judged(RuleRow row, double? value, double[] values, FormattableString why)
    {
        if (row.Holds is { } holds)
        {
            return double.IsNaN(QuantityValues.Of(holds, values))
                ? RuleFinding.Untold(row, RuleWords.NoNumber)
                : new(row, QuantityValues.Holds(holds, values) ? RuleVerdict.Kept : RuleVerdict.NotKept, null, null, null, why);
        }

        double? least = Evaluated(row.AtLeast, values);
        double? most = Evaluated(row.AtMost, values);
        if (value is not { } v || !double.IsFinite(v) || !double.IsFinite(least ?? 0) || !double.IsFinite(most ?? 0))
        {
            return RuleFinding.Untold(row, RuleWords.NoNumber);
        }

        bool kept = (least is not { } from || v >= from - (QuantityValues.Slack * Math.Abs(from))) && (most is not { } to || v <= to + (QuantityValues.Slack * Math.Abs(to)));
        return new(row, kept ? RuleVerdict.Kept : RuleVerdict.NotKept, v, least, most, why);
    }

    private static double? Evaluated(Formula? formula, double[] values) => formula is null ? null : QuantityValues.Of(formula, values);
}
