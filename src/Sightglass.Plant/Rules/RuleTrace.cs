using System.Collections.Immutable;
using Sightglass.Basics.Formulas;
using Sightglass.Basics.Time;
using Sightglass.Book.Rules;

namespace Sightglass.Plant.Rules;

/// <summary>
/// A run as rows see it: the values of quantities at moments, by which tests are judged. The first test that was begun and kept to the end counts; one that was
/// spoilt does not, and another may begin after it.
/// </summary>
/// <param name="binding">The quantities with their measures.</param>
public sealed class RuleTrace(RuleBinding binding)
{
    /// <summary>Between moments, seconds: a test begins and ends at one of them.</summary>
    public const double Every = 1;

    private readonly List<(SimTime Time, double[] Values)> _moments = [];

    /// <summary>Takes in one moment; they come in order.</summary>
    /// <param name="time">The clock.</param>
    /// <param name="valueOf">The value of a measure now, SI; a condition as a margin.</param>
    public void Take(SimTime time, Func<Plans.PlanMeasure, double> valueOf)
    {
        ArgumentNullException.ThrowIfNull(valueOf);
        double[] values = binding.Constants();
        foreach ((int id, Plans.PlanMeasure measure) in binding.Used.Where(u => u.Measure.Constant is null))
        {
            values[id] = valueOf(measure);
        }

        _moments.Add((time, values));
    }

    /// <summary>The findings of the run, in the order of the rows: those with a test measured, those that change as the machine runs held at every moment, the others as the book has them.</summary>
    public ImmutableArray<RuleFinding> Judge() => [.. RuleCheck.Of(binding).Select(Judge)];

    private RuleFinding Judge(RuleFinding ofTheBook)
    {
        RuleRow row = ofTheBook.Row;
        return !row.IsOfTheMachine || !binding.Unmapped(row).IsEmpty ? ofTheBook
            : row.Test is { } test ? Judge(row, test)
            : binding.Running(row).IsEmpty || _moments.Count == 0 ? ofTheBook
            : Throughout(row);
    }

    /// <summary>Kept where it is kept at every moment; else the first at which it is not.</summary>
    private RuleFinding Throughout(RuleRow row)
    {
        FormattableString told = RuleWords.Held(_moments[0].Time, _moments[^1].Time);
        RuleFinding last = RuleFinding.Untold(row, RuleWords.NoNumber);
        foreach ((SimTime time, double[] values) in _moments)
        {
            double? value = row.Value is { } formula ? QuantityValues.Of(formula, values) : null;
            last = RuleCheck.Judged(row, value, values, told);
            if (last.Verdict != RuleVerdict.Kept)
            {
                return last.Verdict == RuleVerdict.NotKept ? last with { Sentence = RuleWords.At(time) } : last;
            }
        }

        return last;
    }

    private RuleFinding Judge(RuleRow row, RuleTest test)
    {
        FormattableString why = RuleWords.NeverBegan;
        for (int i = 0; i < _moments.Count; i++)
        {
            if (!Begins(test, i))
            {
                continue;
            }

            (int first, int last, bool whole) = Stretch(test, i);
            if (last >= 0 && whole)
            {
                FormattableString told = RuleWords.Measured(_moments[first].Time, _moments[last].Time);
                return RuleCheck.Judged(row, Outcome(test, first, last), _moments[i].Values, told);
            }

            why = whole ? RuleWords.CutShort(_moments[i].Time, test.Settles + test.Lasts) : RuleWords.Spoilt(_moments[i].Time);
        }

        return RuleFinding.Untold(row, why);
    }

    /// <summary>True at the moment at which the condition comes true with what must hold, and at the start where both are true already.</summary>
    private bool Begins(RuleTest test, int i) => Ready(test, i) && (i == 0 || !Ready(test, i - 1));

    private bool Ready(RuleTest test, int i) => Holds(test.BeginsWhen, i) && (test.OnlyWhile is null || Holds(test.OnlyWhile, i));

    private bool Holds(Formula condition, int i) => QuantityValues.Holds(condition, _moments[i].Values);

    /// <summary>The first and the last moment that count, −1 where the run ended before; and whether what must hold held up to there.</summary>
    private (int First, int Last, bool Whole) Stretch(RuleTest test, int begin)
    {
        double start = _moments[begin].Time.Seconds;
        int first = -1;
        for (int i = begin; i < _moments.Count; i++)
        {
            if (test.OnlyWhile is { } only && !Holds(only, i))
            {
                return (first, -1, false);
            }

            double t = _moments[i].Time.Seconds - start;
            first = first < 0 && t >= test.Settles - 1e-6 ? i : first;
            if (first >= 0 && _moments[i].Time.Seconds - _moments[first].Time.Seconds >= test.Lasts - 1e-6)
            {
                return (first, i, true);
            }
        }

        return (first, -1, true);
    }

    private double Outcome(RuleTest test, int first, int last)
    {
        double At(int i) => QuantityValues.Of(test.Of, _moments[i].Values);
        double span = _moments[last].Time.Seconds - _moments[first].Time.Seconds;
        return test.Outcome switch
        {
            RuleOutcome.AverageFall => (At(first) - At(last)) / span,
            RuleOutcome.AverageRise => (At(last) - At(first)) / span,
            RuleOutcome.Least => Enumerable.Range(first, last - first + 1).Min(At),
            _ => Enumerable.Range(first, last - first + 1).Max(At),
        };
    }
}
