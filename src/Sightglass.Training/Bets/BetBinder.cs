using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Formulas;
using Sightglass.Basics.Quantities;
using Sightglass.Basics.Time;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;
using Sightglass.World;
using Sightglass.World.Situations;

namespace Sightglass.Training.Bets;

/// <summary>Binds a bet to the plant of its situation, or says everything that does not fit.</summary>
public sealed class BetBinder
{
    private readonly Plan _plan;
    private readonly DiagnosticList _found;
    private bool _fits = true;

    private BetBinder(Plan plan, DiagnosticList found) => (_plan, _found) = (plan, found);

    /// <param name="fleet">The plans of the book, all without errors.</param>
    /// <param name="bet">Of the book.</param>
    /// <param name="found">Takes what does not fit.</param>
    /// <returns>Null where something does not fit.</returns>
    public static BoundBet? Bind(Fleet fleet, Bet bet, DiagnosticList found)
    {
        ArgumentNullException.ThrowIfNull(fleet);
        ArgumentNullException.ThrowIfNull(bet);
        ArgumentNullException.ThrowIfNull(found);
        ClassBook book = fleet.Class!.Book;
        if (!book.Situations.TryGetValue(bet.Situation, out Situation? situation))
        {
            found.Error("W010", bet.SituationSpan, $"there is no situation `{bet.Situation}`", Nearest.DidYouMean(bet.Situation, book.Situations.Keys) ?? "describe it among the situations");
            return null;
        }

        string? number = situation.RoadNumbers.FirstOrDefault() ?? (book.RoadNumbers.IsEmpty ? null : book.RoadNumbers.Values.OrderBy(n => n.Span).First().Number);
        return fleet.For(number, situation.Train) is { } plan ? new BetBinder(plan, found).Bind(bet, situation, number) : null;
    }

    private BoundBet? Bind(Bet bet, Situation situation, string? number)
    {
        _fits &= SituationStart.Bind(_plan, situation, _found) is not null;
        if (Drawn(situation) is { } drawn)
        {
            Wrong("W011", bet.SituationSpan, $"the situation `{situation.Name}` draws {drawn}, so the bet has no one answer", "take a situation with fixed values");
        }

        ImmutableArray<(SimTime, WorldAction)> acts = [.. bet.Acts.Select(Act).OfType<(SimTime, WorldAction)>()];
        ImmutableArray<Signal?> answers = [.. bet.Answers.Select((a, i) => Answer(a, i == bet.Answers.Length - 1))];
        ImmutableArray<BoundShow> shows = [.. bet.Shows.Select(Show).OfType<BoundShow>()];
        return _fits ? new(bet, _plan, new(number, situation.Name, 1, 0), acts, answers, shows) : null;
    }

    /// <summary>The first thing that differs from case to case; where people stand does not matter.</summary>
    private static string? Drawn(Situation situation)
    {
        static bool Varies(StartValue v) => v.OneOf.IsDefaultOrEmpty ? v.From < v.To : v.OneOf.Length > 1;
        return situation.RoadNumbers.Length > 1 ? "its road number"
            : situation.Start.FirstOrDefault(Varies) is { } value ? $"`{value.Name}`"
            : situation.States is { Rows.Length: > 1 } ? "`states`"
            : situation.Faults.FirstOrDefault(f => f.Items.Length > 1 || f.AfterFrom < f.AfterTo || f.Chance is > 0 and < 1 || f.Values.Any(Varies)) is { } fault ? $"the fault `{fault.Fault}`"
            : null;
    }

    private (SimTime, WorldAction)? Act(BetAct act)
    {
        SimTime at = SimTime.FromSeconds(act.After);
        if (WorldInput.Find(act.Name) is not null)
        {
            return (at, new WorldAction.SetInput(act.Name, act.Value));
        }

        if (!_plan.Items.TryGetValue(act.Name, out ItemPlan? item) || item.Position is null)
        {
            string[] controls = [.. _plan.Items.Values.Where(i => i.Position is not null).Select(i => i.Item.Name), .. WorldInput.All.Select(i => i.Name)];
            return Wrong("W012", act.Span, $"`{act.Name}` cannot be set", Nearest.DidYouMean(act.Name, controls) ?? "name a control that runs, or a quantity of the surroundings");
        }

        return item.Item.Positions.Contains(act.To)
            ? (at, new WorldAction.Operate(-1, act.Name, act.To))
            : Wrong("W013", act.Span, $"`{act.Name}` has no position `{act.To}`", Nearest.DidYouMean(act.To, item.Item.Positions) ?? $"it has {string.Join(", ", item.Item.Positions)}");
    }

    private FormulaSignal? Answer(BetChoice answer, bool last)
    {
        if (answer.When is null)
        {
            return last ? null : (FormulaSignal?)Lost("W014", answer.Span, "an answer without `when` comes true whenever none before it does", "put it last, or say when it comes true");
        }

        return FormulaParser.Parse(answer.When, answer.WhenSpan, _plan.Scope, _found, FormulaKind.Condition) is { } formula ? new FormulaSignal(formula) : (FormulaSignal?)Lost();
    }

    private BoundShow? Show(BetShow show)
    {
        if (FormulaParser.Parse(show.Formula, show.Span, _plan.Scope, _found, FormulaKind.Any) is not { } formula)
        {
            return (BoundShow?)Lost();
        }

        return formula.IsCondition
            ? (BoundShow?)Lost("W015", show.Span, "a condition cannot be drawn", "show a quantity")
            : new(show.Name, _plan.Book.ShownIn.GetValueOrDefault(formula.Dimension) ?? UnitTable.SiOf(formula.Dimension), new FormulaSignal(formula));
    }

    private (SimTime, WorldAction)? Wrong(string code, Span span, string message, string? fix)
    {
        Lost(code, span, message, fix);
        return null;
    }

    private object? Lost(string code, Span span, string message, string? fix)
    {
        _found.Error(code, span, message, fix);
        return Lost();
    }

    private object? Lost()
    {
        _fits = false;
        return null;
    }
}
