using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Formulas;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;
using Sightglass.Training.Drills;

namespace Sightglass.Web.Room;

/// <summary>
/// Finds what a drill is about: the quantities that its objectives, must-nevers, reports and cue come to through the facts that they name, and the instruments that show something of the
/// same items. Objectives are told apart into what has to be so at once, so that half of the way is seen.
/// </summary>
public sealed partial class DrillTopics
{
    private const int MostTruths = 6;

    /// <summary>With so many of others, what flows is left out.</summary>
    private const int EnoughTruths = 2;

    private const int FlowRank = 3;
    private const int MostStates = 6;
    private const int MostFaults = 12;
    private const int MostGauges = 2;
    private const int Deepest = 6;
    private const string Joined = " of ";
    private const string Faulty = "fault ";

    private static readonly ConditionalWeakTable<BoundDrill, DrillTopics> s_known = [];

    private readonly Plan _plan;
    private readonly TruthScope _scope;
    private readonly Dictionary<string, FormulaName> _quantities = new(StringComparer.Ordinal);
    private readonly List<string> _order = [];
    private readonly List<FormulaName> _states = [];
    private readonly HashSet<string> _facts = new(StringComparer.Ordinal);

    private DrillTopics(BoundDrill drill)
    {
        _plan = drill.Plan;
        _scope = _plan.Truth;
        Drill told = drill.Drill;
        IEnumerable<FormulaText> formulas = [.. told.Objectives.Select(o => o.Is), .. told.MustNever.Select(n => n.Is), .. told.Reports.Select(r => r.Is), .. told.Cue is { } cue ? [cue] : Array.Empty<FormulaText>()];
        foreach (FormulaText formula in formulas)
        {
            Collect(formula.Text, formula.Span, Vehicle.Alone, 0);
        }

        DrillTopic[] all = [.. _order.Select((name, i) => (Topic: Truth(name), i)).OrderBy(t => Rank(t.Topic.Name)).ThenBy(t => t.i).Select(t => t.Topic).DistinctBy(t => t.Item)];
        int telling = all.Count(t => Rank(t.Name) < FlowRank);
        Truths = [.. all.Take(Math.Min(MostTruths, Math.Max(telling, EnoughTruths)))];
        DrillTopic[] states = [.. _states.DistinctBy(n => n.Name).Select(State)];
        States = [.. states.Where(s => s.Fault is null).Take(MostStates), .. states.Where(s => s.Fault is not null).Take(MostFaults)];
        Gauges = [.. Instruments().Take(MostGauges)];
        Parts = [.. told.Objectives.Select(o => PartsOf(o.Is))];
    }

    /// <summary>Hidden truth, the most telling first; one of each item.</summary>
    public ImmutableArray<DrillTopic> Truths { get; }

    /// <summary>What is so or not so of items, and faults: hidden truth, in the order of the formulas. Its values are not negative while it is so.</summary>
    public ImmutableArray<DrillTopic> States { get; }

    /// <summary>Instruments that show something of them.</summary>
    public ImmutableArray<DrillTopic> Gauges { get; }

    /// <summary>Of each objective what has to be so at once; a single one where it does not come apart.</summary>
    public ImmutableArray<ImmutableArray<Signal>> Parts { get; }

    /// <summary>Truths, states and instruments, in this order.</summary>
    public IEnumerable<DrillTopic> All => [.. Truths, .. States, .. Gauges];

    /// <summary>Those of a drill, found once.</summary>
    public static DrillTopics Of(BoundDrill drill)
    {
        ArgumentNullException.ThrowIfNull(drill);
        return s_known.GetValue(drill, d => new(d));
    }

    private void Collect(string text, Span span, Vehicle vehicle, int depth)
    {
        if (depth > Deepest || Parse(text, span, vehicle) is not { } formula)
        {
            return;
        }

        foreach (FormulaName name in formula.NamesUsed)
        {
            if (_plan.Book.Facts.TryGetValue(name.Name, out Fact? fact))
            {
                if (_facts.Add(name.Name))
                {
                    Collect(fact.Formula, fact.FormulaSpan, fact.Vehicle, depth + 1);
                }
            }
            else if (name.IsCondition && ItemOf(name.Name) is not null)
            {
                _states.Add(name);
            }
            else if (!name.IsCondition && ItemOf(name.Name) is not null && _quantities.TryAdd(name.Name, name))
            {
                _order.Add(name.Name);
            }
        }
    }

    private DrillTopic State(FormulaName name)
    {
        string item = ItemOf(name.Name)!;
        string word = name.Name[..^(item.Length + Joined.Length)];
        TruthSignal margin = new(Parse(name.Name, default, Vehicle.Alone)!, _scope);
        return new(name.Name, item, UnitTable.SiOf(Dimension.One), margin, 1, true, false, null) { IsState = true, Fault = word.StartsWith(Faulty, StringComparison.Ordinal) ? word[Faulty.Length..] : null };
    }

    private DrillTopic Truth(string name)
    {
        FormulaName found = _quantities[name];
        string item = ItemOf(name)!;
        if (_plan.Items[item].Item.Kind.Role == KindRole.Store && _plan.FindSignal($"fill of {item}") is { } fill)
        {
            return new($"fill of {item}", item, UnitTable.Get("%"), fill, 0.01, true, true, (0, 1));
        }

        bool isFill = name.StartsWith("fill of ", StringComparison.Ordinal);
        Unit unit = found.Dimension == Dimension.One ? UnitTable.Get("%") : found.PreferredUnit ?? _plan.Book.ShownIn.GetValueOrDefault(found.Dimension) ?? UnitTable.SiOf(found.Dimension);
        return new(name, item, unit, _plan.Signals[found.Id], unit.Factor * (Rank(name) < FlowRank ? 1 : 0.1), true, isFill, isFill ? (0, 1) : null);
    }

    /// <summary>What is stored tells most, what flows least.</summary>
    private static int Rank(string name) => Words().Match(name).Value switch
    {
        "fill" or "charge" => 0,
        "spilled" or "leak flow" or "overflow" or "flow" or "want" or "current" => FlowRank,
        "pressure" or "temperature" or "level" or "voltage" => 1,
        _ => 2,
    };

    /// <summary>Those that a person at a place reads and that speak of an item of the truths; where none does, none.</summary>
    private IEnumerable<DrillTopic> Instruments()
    {
        string[] items = [.. _order.Select(n => ItemOf(n)!).Distinct()];
        return from item in _plan.Book.ItemsInOrder
               where item is { Reading: not null } && _plan.Items.TryGetValue(item.Name, out ItemPlan? plan) && plan.Shown is not null
               let formula = item.Reading!.Formula ?? ""
               let speaks = items.Count(i => formula.Contains(" of " + i, StringComparison.Ordinal))
               where speaks > 0
               orderby item.Kind.Symbol == "gauge" ? 0 : 1, -speaks, item.Span
               select new DrillTopic(
                   item.Name, item.Name, item.Reading!.Unit, _plan.ReadingOf(item)!, item.Reading.Resolution, false, false, (item.Reading.Minimum, item.Reading.Maximum));
    }

    private ImmutableArray<Signal> PartsOf(FormulaText text)
    {
        List<Signal> parts = [];
        Split(text.Text, text.Span, Vehicle.Alone, 0, parts);
        return [.. parts];
    }

    /// <summary>A fact that says several things at once comes apart, and so on; what cannot be told apart stays whole.</summary>
    private void Split(string text, Span span, Vehicle vehicle, int depth, List<Signal> parts)
    {
        string plain = text.Trim();
        if (depth < Deepest && (_plan.Book.Facts.TryGetValue(vehicle.NameOf(plain), out Fact? fact) || _plan.Book.Facts.TryGetValue(plain, out fact)))
        {
            Split(fact.Formula, fact.FormulaSpan, fact.Vehicle, depth + 1, parts);
            return;
        }

        string[] pieces = Pieces(plain);
        if (depth < Deepest && pieces.Length > 1 && pieces.All(p => Parse(p, span, vehicle) is { IsCondition: true }))
        {
            foreach (string piece in pieces)
            {
                Split(piece, span, vehicle, depth + 1, parts);
            }
        }
        else if (Parse(plain, span, vehicle) is { IsCondition: true } formula)
        {
            parts.Add(new TruthSignal(formula, _scope));
        }
    }

    /// <summary>What stands between the outermost <c>and</c>s; the whole where there is an outermost <c>or</c>.</summary>
    private static string[] Pieces(string text)
    {
        List<string> pieces = [];
        (int open, int from) = (0, 0);
        for (int i = 0; i < text.Length; i++)
        {
            open += text[i] == '(' ? 1 : text[i] == ')' ? -1 : 0;
            if (open == 0 && string.CompareOrdinal(text, i, " or ", 0, 4) == 0)
            {
                return [text];
            }

            if (open == 0 && string.CompareOrdinal(text, i, " and ", 0, 5) == 0)
            {
                pieces.Add(text[from..i]);
                from = i + 5;
            }
        }

        pieces.Add(text[from..]);
        return pieces is [var only] && only is ['(', .., ')'] ? [only] : [.. pieces];
    }

    private Formula? Parse(string text, Span span, Vehicle vehicle) => FormulaParser.Parse(text, span, VehicleScope.Of(vehicle, _scope), [], FormulaKind.Any);

    private string? ItemOf(string name)
    {
        int of = name.IndexOf(Joined, StringComparison.Ordinal);
        return of > 0 && _plan.Items.ContainsKey(name[(of + Joined.Length)..]) ? name[(of + Joined.Length)..] : null;
    }

    [GeneratedRegex("^.*?(?= of )")]
    private static partial Regex Words();
}
