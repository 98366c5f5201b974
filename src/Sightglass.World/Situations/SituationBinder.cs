using System.Collections.Immutable;
using System.Globalization;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;

namespace Sightglass.World.Situations;

/// <summary>Binds a situation to a plan, or says everything that does not fit.</summary>
internal sealed class SituationBinder(Plan plan, Situation situation, DiagnosticList found)
{
    private int _order;
    private bool _fits = true;

    public SituationStart? Bind()
    {
        ImmutableArray<(StartRule, DrawnRange)> starts = [.. situation.Start.Select(Start).OfType<(StartRule, DrawnRange)>()];
        ImmutableArray<(PersonStart, DrawnRange)> people = [.. situation.People.Select(Person)];
        ImmutableArray<BoundFault> faults = [.. situation.Faults.Select(Fault)];
        BoundStates? states = situation.States is { } drawn ? States(drawn) : null;
        return _fits ? new(plan, situation, starts, people, [.. faults.Select(f => f.Settle(plan))], states) : null;
    }

    private void Wrong(string code, Span span, string message, string? fix)
    {
        _fits = false;
        found.Error(code, span, message, fix);
    }

    private (StartRule, DrawnRange)? Start(StartValue value)
    {
        if (!plan.Starts.TryGetValue(value.Name, out StartRule? rule))
        {
            Wrong("W001", value.Span, $"nothing starts with a value for `{value.Name}`", Nearest.DidYouMean(value.Name, plan.Starts.Keys));
            return null;
        }

        bool words = !value.OneOf.IsDefaultOrEmpty;
        if (rule.Choices.IsDefaultOrEmpty)
        {
            if (words || value.Unit is null || value.Unit.Dimension != rule.Dimension)
            {
                Wrong("W002", value.Span, $"`{value.Name}` wants {rule.Dimension}", "write a value with its unit, or a range `A .. B`");
                return null;
            }

            _ = CheckLimits(rule, value.From, value.Unit, value.Span) && CheckLimits(rule, value.To, value.Unit, value.Span);
        }
        else if (!words)
        {
            Wrong("W003", value.Span, $"`{value.Name}` wants a position", $"it has {string.Join(", ", rule.Choices)}");
            return null;
        }
        else if (value.OneOf.FirstOrDefault(w => !rule.Choices.Contains(w)) is { } wrong)
        {
            Wrong("W003", value.Span, $"`{value.Name}` has no position `{wrong}`", Nearest.DidYouMean(wrong, rule.Choices) ?? $"it has {string.Join(", ", rule.Choices)}");
            return null;
        }

        return (rule, SituationStart.RangeOf(_order++, value.Name, value));
    }

    /// <summary>Whether a value is one that its store can hold.</summary>
    private bool CheckLimits(StartRule rule, double value, Unit unit, Span span)
    {
        if (value >= rule.Least && value <= rule.Greatest)
        {
            return true;
        }

        string Say(double si) => string.Create(CultureInfo.InvariantCulture, $"{unit.FromSi(si):0.###} {(unit.Symbol == "1" ? "" : unit.Symbol)}").TrimEnd();
        Wrong("W018", span, $"`{rule.Name}` cannot be {Say(value)}", value < rule.Least ? $"no less than {Say(rule.Least)}" : $"no more than {Say(rule.Greatest)}");
        return false;
    }

    private BoundStates? States(StatesDraw states)
    {
        if (states.Of is not { Table: { } table } recording || states.Rows.IsEmpty)
        {
            Wrong("W019", states.Span, $"the rows of `{states.Recording}` were not read", "its file lies in the book's folder");
            return null;
        }

        for (int i = 0; i < recording.Columns.Length; i++)
        {
            foreach (string name in recording.Columns[i].Sets)
            {
                Check(recording.Columns[i], name, table.Columns[i], states);
            }
        }

        return _fits ? BoundStates.Of(states, plan.Starts) : null;
    }

    private void Check(RecordedColumn column, string name, RecordedValues values, StatesDraw states)
    {
        if (!plan.Starts.TryGetValue(name, out StartRule? rule))
        {
            Wrong("W001", column.Span, $"nothing starts with a value for `{name}`", Nearest.DidYouMean(name, plan.Starts.Keys));
        }
        else if (column.Unit is { } unit)
        {
            _ = states.Rows.All(r => CheckLimits(rule, values.Numbers[r], unit, values.SpanOf(r)));
        }
        else if (values.Words.FirstOrDefault(w => !rule.Choices.Contains(w)) is { } wrong)
        {
            Wrong("W003", column.Span, $"`{name}` has no position `{wrong}`", Nearest.DidYouMean(wrong, rule.Choices) ?? $"it has {string.Join(", ", rule.Choices)}");
        }
    }

    private (PersonStart, DrawnRange) Person(PersonStart person)
    {
        if (!plan.Book.Roles.ContainsKey(person.Role))
        {
            Wrong("W007", person.Span, $"there is no role `{person.Role}`", Nearest.DidYouMean(person.Role, plan.Book.Roles.Keys));
        }

        foreach (string place in person.Places.Where(p => !plan.Book.Places.ContainsKey(p)))
        {
            Wrong("W008", person.Span, $"there is no place `{place}`", Nearest.DidYouMean(place, plan.Book.Places.Keys));
        }

        return (person, new(_order++, $"place of {person.Role}", 0, 0, null, person.Places));
    }

    private BoundFault Fault(FaultStart fault)
    {
        foreach (string item in fault.Items)
        {
            CheckFault(fault, item);
        }

        Unit second = UnitTable.Find("s")!;
        return new(
            fault,
            SituationStart.Share(_order++, $"{fault.Fault}, chance"),
            new(_order++, $"{fault.Fault}, on", 0, 0, null, fault.Items),
            new(_order++, $"{fault.Fault}, after", fault.AfterFrom, fault.AfterTo, second, []),
            [.. fault.Values.Select(v => SituationStart.RangeOf(_order++, $"{fault.Fault}, {v.Name}", v))]);
    }

    private void CheckFault(FaultStart fault, string item)
    {
        if (!plan.Items.TryGetValue(item, out ItemPlan? p))
        {
            Wrong("W004", fault.Span, $"no item `{item}` can have a fault", Nearest.DidYouMean(item, plan.Items.Keys));
        }
        else if (!p.Faults.TryGetValue(fault.Fault, out ImmutableArray<FaultValue> values))
        {
            Wrong("W005", fault.Span, $"`{item}` has no fault `{fault.Fault}`", Nearest.DidYouMean(fault.Fault, p.Faults.Keys) ?? $"it has {string.Join(", ", p.Faults.Keys)}");
        }
        else
        {
            foreach (StartValue v in fault.Values.Where(v => !values.Any(s => s.Name == v.Name)))
            {
                Wrong("W006", v.Span, $"fault `{fault.Fault}` takes no `{v.Name}`", Nearest.DidYouMean(v.Name, values.Select(s => s.Name)));
            }

            foreach (StartValue v in fault.Values)
            {
                CheckNumber(fault, v, item, values.FirstOrDefault(s => s.Name == v.Name));
            }
        }
    }

    /// <summary>A number by which something is called must be one that calls something, in all of its range.</summary>
    private void CheckNumber(FaultStart fault, StartValue given, string item, FaultValue? value)
    {
        for (double number = given.From; value is { Known.IsEmpty: false } && number <= given.To; number++)
        {
            if (!value.Knows(number))
            {
                Wrong("W017", given.Span == Span.None ? fault.Span : given.Span, $"`{item}` has no {value.Name} {number:0}", $"it has {string.Join(", ", value.Known.Order().Select(k => k.ToString("0", CultureInfo.InvariantCulture)))}");
                return;
            }
        }
    }
}
