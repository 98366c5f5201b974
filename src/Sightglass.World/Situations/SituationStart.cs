using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Quantities;
using Sightglass.Basics.Time;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;

namespace Sightglass.World.Situations;

/// <summary>A situation bound to a plan: puts worlds where it says, each range drawn independently.</summary>
public sealed class SituationStart
{
    private readonly ImmutableArray<(StartRule Rule, DrawnRange Range)> _starts;
    private readonly ImmutableArray<(PersonStart Person, DrawnRange Range)> _people;
    private readonly ImmutableArray<BoundFault> _faults;

    internal SituationStart(
        Plan plan, Situation situation, ImmutableArray<(StartRule, DrawnRange)> starts, ImmutableArray<(PersonStart, DrawnRange)> people, ImmutableArray<BoundFault> faults)
    {
        (Plan, Situation, _starts, _people, _faults) = (plan, situation, starts, people, faults);
        Ranges = [.. _starts.Select(s => s.Range), .. _people.Select(p => p.Range), .. _faults.SelectMany(f => f.Ranges)];
    }

    public Plan Plan { get; }

    public Situation Situation { get; }

    /// <summary>Everything drawn, in order of drawing; also what does not vary.</summary>
    public ImmutableArray<DrawnRange> Ranges { get; }

    /// <summary>Checks a situation against a plan. Null when it does not fit; every error is in <paramref name="found"/>.</summary>
    public static SituationStart? Bind(Plan plan, Situation situation, DiagnosticList found) => new SituationBinder(plan, situation, found).Bind();

    /// <summary>Puts a world, just reset, at the start of a case.</summary>
    public void Apply(World world, CaseDraws draws)
    {
        ArgumentNullException.ThrowIfNull(world);
        ArgumentNullException.ThrowIfNull(draws);
        foreach ((StartRule rule, DrawnRange range) in _starts)
        {
            double value = range.Value(draws);
            if (rule.Network >= 0)
            {
                world.SetStartAmount(rule.Network, rule.Amount, rule.ToAmount!(value));
            }
            else
            {
                world.SetSlot(rule.Slot, range.Words.IsEmpty ? value : rule.Choices.IndexOf(range.Words[(int)value]));
            }
        }

        foreach ((PersonStart person, DrawnRange range) in _people)
        {
            world.AddPerson(Plan.Book.Roles[person.Role], person.Places[(int)range.Value(draws)]);
        }

        foreach (BoundFault fault in _faults)
        {
            if (fault.Happens.Value(draws) < fault.Chance)
            {
                world.AddFault(fault.Draw(draws), SimTime.FromSeconds(fault.After.Value(draws)));
            }
        }
    }

    /// <inheritdoc cref="Apply(World, CaseDraws)"/>
    public void Apply(World world, ulong seed, ulong caseNumber) => Apply(world, new CaseDraws(seed, caseNumber));

    internal static DrawnRange RangeOf(int order, string name, StartValue value) =>
        new(order, name, value.From, value.To, value.Unit, value.OneOf.IsDefault ? [] : value.OneOf);

    internal static DrawnRange Share(int order, string name) => new(order, name, 0, 1, UnitTable.Find("1"), []);
}
