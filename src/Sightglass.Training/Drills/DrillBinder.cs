using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Formulas;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;
using Sightglass.World;
using Sightglass.World.Situations;

namespace Sightglass.Training.Drills;

/// <summary>Binds a drill to the plant of its situation, or says everything that does not fit.</summary>
public sealed class DrillBinder
{
    private readonly Drill _drill;
    private readonly Plan _plan;
    private readonly TruthScope _scope;
    private readonly DiagnosticList _found;

    private DrillBinder(Drill drill, Plan plan, DiagnosticList found) => (_drill, _plan, _scope, _found) = (drill, plan, plan.Truth, found);

    /// <param name="fleet">The plans of the book, all without errors.</param>
    /// <param name="drill">Of the book.</param>
    /// <param name="found">Takes what does not fit.</param>
    /// <param name="roadNumber">On which machine; null for the first that the situation may draw.</param>
    /// <returns>Null where something does not fit.</returns>
    public static BoundDrill? Bind(Fleet fleet, Drill drill, DiagnosticList found, string? roadNumber = null)
    {
        ArgumentNullException.ThrowIfNull(fleet);
        ArgumentNullException.ThrowIfNull(drill);
        ArgumentNullException.ThrowIfNull(found);
        ClassBook book = fleet.Class!.Book;
        if (!book.Situations.TryGetValue(drill.Situation, out Situation? situation))
        {
            found.Error("W020", drill.SituationSpan, $"there is no situation `{drill.Situation}`", Nearest.DidYouMean(drill.Situation, book.Situations.Keys) ?? "describe it among the situations");
            return null;
        }

        string? number = roadNumber ?? situation.RoadNumbers.FirstOrDefault() ?? (book.RoadNumbers.IsEmpty ? null : book.RoadNumbers.Values.OrderBy(n => n.Span).First().Number);
        return fleet.MachineOf(number, situation.Train) is { } plan ? Bind(plan, drill, situation, found) : null;
    }

    /// <summary>A drill that is not in the book yet.</summary>
    /// <param name="plan">In the train of the situation.</param>
    /// <param name="drill">What is asked.</param>
    /// <param name="situation">Where it starts.</param>
    /// <param name="found">Takes what does not fit.</param>
    public static BoundDrill? Bind(Plan plan, Drill drill, Situation situation, DiagnosticList found)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(situation);
        return new DrillBinder(drill, plan, found).Bind(situation);
    }

    private BoundDrill? Bind(Situation situation)
    {
        int before = _found.Count(d => d.Severity == Severity.Error);
        SituationStart.Bind(_plan, situation, _found);
        int person = Enumerable.Range(0, situation.People.Length).FirstOrDefault(i => situation.People[i].Role == _drill.Role, -1);
        if (person < 0)
        {
            Wrong("W021", _drill.RoleSpan, $"nobody in the situation `{situation.Name}` is `{_drill.Role}`", $"there are {string.Join(", ", situation.People.Select(p => p.Role))}");
        }

        if (_drill.SolvedBy.IsEmpty)
        {
            Wrong("W022", _drill.Span, $"nothing shows that the drill `{_drill.Name}` can be passed", "name a card that passes it: `solved by: [CARD]`");
        }

        BoundDrill bound = new(
            _drill,
            _plan,
            situation with { Answers = situation.Answers with { Unanswered = 0 } },
            person,
            _drill.Cue is { } cue ? Condition(cue) : null,
            [.. _drill.KnownFrom.Select(Known).OfType<KnownFrom>()],
            [.. _drill.Objectives.Select(o => Condition(o.Is))],
            [.. _drill.Reports.Select(r => Condition(r.Is))],
            [.. _drill.MustNever.Select(n => Condition(n.Is))],
            [.. _drill.Orders.Select(o => (Condition(o.First), Condition(o.Then)))],
            [.. _drill.Events.Select(e => new BoundEvent(e, When(e), Does(e)))]);
        return _found.Count(d => d.Severity == Severity.Error) == before ? bound : null;
    }

    private Signal Condition(FormulaText text) =>
        FormulaParser.Parse(text.Text, text.Span, _scope, _found, FormulaKind.Condition) is { } formula ? new TruthSignal(formula, _scope) : new ConstantSignal(-1);

    private KnownFrom? Known(string name)
    {
        if (_plan.Book.Signs.TryGetValue(name, out Sign? sign))
        {
            return new(name, sign.Places, _plan.Signs[name]);
        }

        if (_plan.Items.TryGetValue(name, out ItemPlan? item) && (item.Shown is not null || item.Lit is not null))
        {
            return new(name, item.Item.Places, item.Lit);
        }

        string[] telling = [.. _plan.Book.Signs.Keys, .. _plan.Book.Items.Values.Where(i => i.Reading is not null).Select(i => i.Name)];
        Wrong("W023", _drill.KnownFromSpan, $"`{name}` tells nothing", Nearest.DidYouMean(name, telling) ?? "name a sign, an instrument or a lamp");
        return null;
    }

    private Signal? When(DrillEvent e)
    {
        if (e.At is { } place && !_plan.Book.Places.ContainsKey(place))
        {
            Wrong("W024", e.Span, $"there is no place `{place}`", Nearest.DidYouMean(place, _plan.Book.Places.Keys));
        }

        if (e.Operated is { } control && !IsControl(control))
        {
            NoControl(control, e.Span, []);
        }

        return e.When is { } when ? Condition(when) : null;
    }

    private WorldAction? Does(DrillEvent e)
    {
        if (e.Sets is { } sets)
        {
            return Set(e, sets);
        }

        return e.Fault is { } fault ? Fault(e, fault) : null;
    }

    private WorldAction? Set(DrillEvent e, string sets)
    {
        if (WorldInput.Find(sets) is not null)
        {
            return new WorldAction.SetInput(sets, e.ToValue);
        }

        if (!IsControl(sets))
        {
            NoControl(sets, e.Span, WorldInput.All.Select(i => i.Name));
            return null;
        }

        ImmutableArray<string> positions = _plan.Book.Items[sets].Positions;
        if (!positions.Contains(e.To))
        {
            Wrong("W026", e.Span, $"`{sets}` has no position `{e.To}`", Nearest.DidYouMean(e.To, positions) ?? $"it has {string.Join(", ", positions)}");
        }

        return new WorldAction.Operate(-1, sets, e.To);
    }

    private WorldAction? Fault(DrillEvent e, string fault)
    {
        if (!_plan.Book.Items.TryGetValue(e.On, out Item? item))
        {
            Wrong("W027", e.Span, $"there is no item `{e.On}`", Nearest.DidYouMean(e.On, _plan.Book.Items.Keys));
            return null;
        }

        if (item.Kind.Faults.FirstOrDefault(f => f.Name == fault) is not { } known)
        {
            Wrong("W028", e.Span, $"`{e.On}` has no fault `{fault}`", Nearest.DidYouMean(fault, item.Kind.Faults.Select(f => f.Name)) ?? $"it has {string.Join(", ", item.Kind.Faults.Select(f => f.Name))}");
            return null;
        }

        var values = ImmutableSortedDictionary.CreateBuilder<string, double>(StringComparer.Ordinal);
        foreach ((string name, FormulaText text) in e.Values)
        {
            if (known.Parameters.FirstOrDefault(p => p.Name == name) is not { } parameter)
            {
                Wrong("W029", text.Span, $"the fault `{fault}` takes no `{name}`", Nearest.DidYouMean(name, known.Parameters.Select(p => p.Name)));
            }
            else if (QuantityText.TryParse(text.Text, text.Span, parameter.Dimension, _found, out Quantity quantity))
            {
                values[name] = quantity.Si;
            }
        }

        return e.TakesOut ? new WorldAction.TakeOut(e.On, fault) : new WorldAction.PutIn(e.On, fault, values.ToImmutable());
    }

    private bool IsControl(string name) => _plan.Items.TryGetValue(name, out ItemPlan? item) && item.Position is not null;

    private void NoControl(string name, Span span, IEnumerable<string> others) => Wrong(
        "W025", span, $"`{name}` cannot be set", Nearest.DidYouMean(name, [.. _plan.Items.Values.Where(i => i.Position is not null).Select(i => i.Item.Name), .. others]) ?? "name a control that runs");

    private void Wrong(string code, Span span, string message, string? fix) => _found.Error(code, span, message, fix);
}
