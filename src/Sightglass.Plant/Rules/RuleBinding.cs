using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Formulas;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Rules;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Rules;

/// <summary>The quantities of a set of rules, each with the measure that a machine's book has for it.</summary>
public sealed class RuleBinding
{
    private readonly PlanMeasure?[] _measures;

    private RuleBinding(RuleSet rules, PlanMeasure?[] measures) => (Rules, _measures) = (rules, measures);

    public RuleSet Rules { get; }

    /// <summary>The measures that are used, with the ids of their quantities.</summary>
    public IEnumerable<(int Id, PlanMeasure Measure)> Used => _measures.Select((m, i) => (i, m)).Where(p => p.m is not null).Select(p => (p.i, p.m!));

    /// <summary>How many quantities there are.</summary>
    public int Count => _measures.Length;

    /// <summary>Finds the measure of each quantity. A measure of the wrong sort is an error (R020), one that no rule asks for is noted (R021).</summary>
    /// <param name="rules">The set.</param>
    /// <param name="plan">The machine.</param>
    /// <param name="found">Places in it are those of the book's files.</param>
    public static RuleBinding Of(RuleSet rules, Plan plan, DiagnosticList found)
    {
        ArgumentNullException.ThrowIfNull(rules);
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(found);
        PlanMeasure?[] measures = new PlanMeasure?[rules.Names.Count];
        foreach (PlanMeasure measure in plan.Measures.Values)
        {
            if (!rules.Names.TryGet(measure.Written.Name, out FormulaName name))
            {
                found.Add(new("R021", Severity.Note, measure.Written.Span, $"no rule asks for `{measure.Written.Name}`", Nearest.DidYouMean(measure.Written.Name, rules.Names.Names)));
            }
            else if (name.IsCondition != measure.Formula.IsCondition || (!name.IsCondition && name.Dimension != measure.Formula.Dimension))
            {
                found.Error("R020", measure.Written.FormulaSpan, $"`{name.Name}` is {Sort(measure.Formula.IsCondition, measure.Formula.Dimension)} here", $"the rules want {Sort(name.IsCondition, name.Dimension)}");
            }
            else
            {
                measures[name.Id] = measure;
            }
        }

        return new(rules, measures);
    }

    public PlanMeasure? MeasureOf(int id) => _measures[id];

    /// <summary>Names of the quantities of a row that the book says nothing of.</summary>
    public ImmutableArray<string> Unmapped(RuleRow row)
    {
        ArgumentNullException.ThrowIfNull(row);
        return [.. row.Names.Where(n => _measures[n.Id] is null).Select(n => n.Name)];
    }

    /// <summary>Names of the quantities of a row that are known only of a running machine.</summary>
    public ImmutableArray<string> Running(RuleRow row)
    {
        ArgumentNullException.ThrowIfNull(row);
        return [.. row.Names.Where(n => _measures[n.Id] is { Constant: null }).Select(n => n.Name)];
    }

    /// <summary>The constant values by the ids of quantities; not a number where there is none.</summary>
    internal double[] Constants() => [.. _measures.Select(m => m?.Constant ?? double.NaN)];

    private static string Sort(bool isCondition, Dimension dimension) => isCondition ? "something true or not" : dimension.ToString();
}
