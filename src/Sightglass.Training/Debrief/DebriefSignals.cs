using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Formulas;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;
using Sightglass.Training.Drills;

namespace Sightglass.Training.Debrief;

/// <summary>
/// Finds the numbers that a drill is about: what its must-nevers, objectives, cue and reports name, down through the facts that they name, and the instruments that tell of the same things.
/// </summary>
public sealed class DebriefSignals
{
    /// <summary>More than these are not followed: a picture of them could not be read.</summary>
    private const int Most = 32;

    private readonly Plan _plan;
    private readonly TruthScope _scope;
    private readonly List<FormulaName> _numbers = [];
    private readonly HashSet<string> _seen = new(StringComparer.Ordinal);

    private DebriefSignals(Plan plan) => (_plan, _scope) = (plan, plan.Truth);

    /// <summary>Those of a drill, what it is judged by first.</summary>
    public static ImmutableArray<DebriefSignal> Of(BoundDrill drill)
    {
        ArgumentNullException.ThrowIfNull(drill);
        DebriefSignals found = new(drill.Plan);
        Drill asked = drill.Drill;
        IEnumerable<FormulaText?> all =
        [
            .. asked.MustNever.Select(n => n.Is), .. asked.Objectives.Select(o => o.Is), asked.Cue,
            .. asked.Reports.Select(r => r.Is), .. asked.Orders.SelectMany(o => new[] { o.First, o.Then }),
        ];
        foreach (FormulaText text in all.OfType<FormulaText>())
        {
            found.Follow(text.Text);
        }

        return found.Signals(asked);
    }

    private ImmutableArray<DebriefSignal> Signals(Drill asked)
    {
        HashSet<string> items = [.. _numbers.Select(n => ItemOf(n.Name)).OfType<string>()];
        IEnumerable<DebriefSignal> read = _plan.Book.ItemsInOrder
            .Where(i => i.Reading is not null && _plan.Items[i.Name].Shown is not null && (asked.KnownFrom.Contains(i.Name) || Tells(i, items)))
            .OrderByDescending(i => asked.KnownFrom.Contains(i.Name))
            .Select(i => new DebriefSignal(i.Name, i.Reading!.Unit, _plan.Items[i.Name].Shown!, i));
        IEnumerable<DebriefSignal> numbers = _numbers.Where(n => n.Dimension != Dimension.One).Select(n => new DebriefSignal(n.Name, UnitOf(n.Dimension), _plan.Signals[n.Id], null));
        IEnumerable<DebriefSignal> stored = items.Where(i => _plan.Book.Items[i].Kind.Role == KindRole.Store)
            .SelectMany(i => new[] { $"volume of {i}", $"pressure of {i}" }).Where(n => _plan.Scope.TryGet(n, out _) && !_seen.Contains(n))
            .Select(n => _plan.Scope.TryGet(n, out FormulaName name) ? new DebriefSignal(n, UnitOf(name.Dimension), _plan.Signals[name.Id], null) : null!);
        return [.. numbers.Take(Most / 2).Concat(read.Take(Most / 2)).Concat(stored).Take(Most)];
    }

    /// <summary>The numbers that a condition names; facts are followed to those that they name.</summary>
    private void Follow(string condition)
    {
        if (FormulaParser.Parse(condition, Span.None, _scope, [], FormulaKind.Condition) is not { } formula)
        {
            return;
        }

        foreach (FormulaName name in formula.NamesUsed.Where(n => _seen.Add(n.Name)))
        {
            if (name.IsCondition && _plan.Book.Facts.TryGetValue(name.Name, out Fact? fact))
            {
                Follow(fact.Formula);
            }
            else if (!name.IsCondition)
            {
                _numbers.Add(name);
            }
        }
    }

    private string? ItemOf(string name)
    {
        int at = name.IndexOf(" of ", StringComparison.Ordinal);
        return at >= 0 && _plan.Book.Items.ContainsKey(name[(at + 4)..]) ? name[(at + 4)..] : null;
    }

    /// <summary>Whether an instrument's formula names one of the items, or it stands at one.</summary>
    private bool Tells(Item instrument, HashSet<string> items) => instrument.Reading!.Formula is { } formula
        ? items.Any(i => formula.Contains(" of " + i, StringComparison.Ordinal))
        : instrument.Parameters.TryGetValue("of", out ParameterValue? of) && (items.Contains(of.Text) || of.Names.Any(items.Contains));

    private Unit UnitOf(Dimension dimension) => _plan.Book.ShownIn.GetValueOrDefault(dimension)
        ?? _plan.Book.Items.Values.Select(i => i.Reading?.Unit).FirstOrDefault(u => u is not null && u.Dimension == dimension) ?? UnitTable.SiOf(dimension);
}
