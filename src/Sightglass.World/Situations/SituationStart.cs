using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Draws;
using Sightglass.Basics.Time;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;

namespace Sightglass.World.Situations;

/// <summary>
/// Puts a world where a situation says, each range drawn by (seed, case, the range's place in the situation): not by its name, so that
/// renaming changes nothing, and in any order, on any thread.
/// </summary>
public sealed class SituationStart
{
    private readonly ImmutableArray<(StartValue Value, StartRule Rule)> _starts;
    private readonly ImmutableArray<FaultStart> _faults;

    private SituationStart(Plan plan, Situation situation, ImmutableArray<(StartValue, StartRule)> starts, ImmutableArray<FaultStart> faults) =>
        (Plan, Situation, _starts, _faults) = (plan, situation, starts, faults);

    public Plan Plan { get; }

    public Situation Situation { get; }

    /// <summary>The ranges that are drawn, in their order: for maps and for what matters.</summary>
    public ImmutableArray<DrawnRange> Ranges => [.. StartRanges().Concat(FaultRanges())];

    /// <summary>Checks a situation against a plan. Null when it does not fit; every error is in <paramref name="found"/>.</summary>
    public static SituationStart? Bind(Plan plan, Situation situation, DiagnosticList found)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(situation);
        ArgumentNullException.ThrowIfNull(found);
        int before = found.Count;
        List<(StartValue, StartRule)> starts = [];
        foreach (StartValue value in situation.Start)
        {
            if (!plan.Starts.TryGetValue(value.Name, out StartRule? rule))
            {
                found.Error("W001", value.Span, $"nothing starts with a value for `{value.Name}`", Nearest.DidYouMean(value.Name, plan.Starts.Keys));
            }
            else if (CheckValue(value, rule, found))
            {
                starts.Add((value, rule));
            }
        }

        foreach (FaultStart fault in situation.Faults)
        {
            CheckFault(plan, fault, found);
        }

        foreach (PersonStart person in situation.People)
        {
            CheckPerson(plan, person, found);
        }

        return found.Skip(before).Any(d => d.Severity == Severity.Error) ? null : new(plan, situation, [.. starts], situation.Faults);
    }

    /// <summary>Puts a world, just reset, at the start of one case.</summary>
    public void Apply(World world, ulong seed, ulong caseNumber)
    {
        ArgumentNullException.ThrowIfNull(world);
        for (int i = 0; i < _starts.Length; i++)
        {
            (StartValue value, StartRule rule) = _starts[i];
            double drawn = DrawValue(value, rule, seed, caseNumber, Key("start", i));
            if (rule.Network >= 0)
            {
                world.SetStartAmount(rule.Network, rule.Amount, rule.ToAmount!(drawn));
            }
            else
            {
                world.SetSlot(rule.Slot, drawn);
            }
        }

        for (int i = 0; i < Situation.People.Length; i++)
        {
            PersonStart person = Situation.People[i];
            string place = person.Places[Draw.OneOf(seed, caseNumber, Key("person", i), person.Places.Length)];
            world.AddPerson(Plan.Book.Roles[person.Role], place);
        }

        for (int i = 0; i < _faults.Length; i++)
        {
            ApplyFault(world, _faults[i], i, seed, caseNumber);
        }
    }

    private static DrawKey Key(string sort, int index) => DrawKey.Of(sort).At(index);

    private static DrawKey Key(string sort, int index, int part) => Key(sort, index).At(part + 1);

    private static double DrawValue(StartValue value, StartRule rule, ulong seed, ulong caseNumber, DrawKey key)
    {
        if (value.OneOf.IsDefaultOrEmpty)
        {
            return Draw.Between(seed, caseNumber, key, value.From, value.To);
        }

        string word = value.OneOf[Draw.OneOf(seed, caseNumber, key, value.OneOf.Length)];
        return rule.Choices.IndexOf(word);
    }

    private void ApplyFault(World world, FaultStart fault, int index, ulong seed, ulong caseNumber)
    {
        if (!Draw.Happens(seed, caseNumber, Key("chance", index), fault.Chance))
        {
            return;
        }

        string item = fault.Items[Draw.OneOf(seed, caseNumber, Key("on", index), fault.Items.Length)];
        double after = Draw.Between(seed, caseNumber, Key("after", index), fault.AfterFrom, fault.AfterTo);
        SortedDictionary<string, double> values = new(StringComparer.Ordinal);
        for (int i = 0; i < fault.Values.Length; i++)
        {
            StartValue v = fault.Values[i];
            values[v.Name] = Draw.Between(seed, caseNumber, Key("value", index, i), v.From, v.To);
        }

        world.AddFault(new(item, fault.Fault, values.ToImmutableSortedDictionary(StringComparer.Ordinal)), SimTime.FromSeconds(after));
    }

    private IEnumerable<DrawnRange> StartRanges() =>
        from s in _starts.Select((s, i) => (s.Value, s.Rule, Index: i))
        where s.Value.From != s.Value.To || s.Value.OneOf is { IsDefaultOrEmpty: false, Length: > 1 }
        select new DrawnRange(s.Value.Name, s.Value, (seed, number) => DrawValue(s.Value, s.Rule, seed, number, Key("start", s.Index)));

    private IEnumerable<DrawnRange> FaultRanges() =>
        from f in _faults.Select((f, i) => (Fault: f, Index: i))
        from v in f.Fault.Values.Select((v, i) => (Value: v, Part: i))
        where v.Value.From != v.Value.To
        select new DrawnRange($"{f.Fault.Fault}, {v.Value.Name}", v.Value, (seed, number) => Draw.Between(seed, number, Key("value", f.Index, v.Part), v.Value.From, v.Value.To));

    private static bool CheckValue(StartValue value, StartRule rule, DiagnosticList found)
    {
        if (rule.Choices.IsDefaultOrEmpty)
        {
            if (!value.OneOf.IsDefaultOrEmpty || value.Unit is null || value.Unit.Dimension != rule.Dimension)
            {
                found.Error("W002", value.Span, $"`{value.Name}` wants {rule.Dimension}", "write a value with its unit, or a range `A .. B`");
                return false;
            }

            return true;
        }

        foreach (string word in value.OneOf.IsDefault ? [] : value.OneOf)
        {
            if (!rule.Choices.Contains(word))
            {
                found.Error("W003", value.Span, $"`{value.Name}` has no position `{word}`", Nearest.DidYouMean(word, rule.Choices) ?? $"it has {string.Join(", ", rule.Choices)}");
                return false;
            }
        }

        if (value.OneOf.IsDefaultOrEmpty)
        {
            found.Error("W003", value.Span, $"`{value.Name}` wants a position", $"it has {string.Join(", ", rule.Choices)}");
            return false;
        }

        return true;
    }

    private static void CheckFault(Plan plan, FaultStart fault, DiagnosticList found)
    {
        foreach (string item in fault.Items)
        {
            if (!plan.Items.TryGetValue(item, out ItemPlan? p))
            {
                found.Error("W004", fault.Span, $"no item `{item}` can have a fault", Nearest.DidYouMean(item, plan.Items.Keys));
            }
            else if (!p.Faults.TryGetValue(fault.Fault, out ImmutableArray<FaultValue> slots))
            {
                found.Error("W005", fault.Span, $"`{item}` has no fault `{fault.Fault}`", Nearest.DidYouMean(fault.Fault, p.Faults.Keys) ?? $"it has {string.Join(", ", p.Faults.Keys)}");
            }
            else
            {
                foreach (StartValue v in fault.Values.Where(v => !slots.Any(s => s.Name == v.Name)))
                {
                    found.Error("W006", v.Span, $"fault `{fault.Fault}` takes no `{v.Name}`", Nearest.DidYouMean(v.Name, slots.Select(s => s.Name)));
                }
            }
        }
    }

    private static void CheckPerson(Plan plan, PersonStart person, DiagnosticList found)
    {
        if (!plan.Book.Roles.ContainsKey(person.Role))
        {
            found.Error("W007", person.Span, $"there is no role `{person.Role}`", Nearest.DidYouMean(person.Role, plan.Book.Roles.Keys));
        }

        foreach (string place in person.Places.Where(p => !plan.Book.Places.ContainsKey(p)))
        {
            found.Error("W008", person.Span, $"there is no place `{place}`", Nearest.DidYouMean(place, plan.Book.Places.Keys));
        }
    }
}
