using System.Collections.Immutable;
using System.Globalization;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;

namespace Sightglass.World.Situations;

/// <summary>A situation bound to a plan: puts worlds where it says, each range drawn independently, a recorded state as a whole.</summary>
public sealed class SituationStart
{
    /// <summary>Which row of a recording a case has, in the order of draws: before all of a situation, so that no other draw moves when it comes or goes.</summary>
    public const int RowOrder = RoadNumberDraw.Order - 1;

    private readonly ImmutableArray<BoundStart> _starts;
    private readonly ImmutableArray<(Role Role, ImmutableArray<int> Places, DrawnRange Range)> _people;
    private readonly ImmutableArray<BoundFault> _faults;
    private readonly BoundStates? _states;

    internal SituationStart(
        Plan plan, Situation situation, ImmutableArray<(StartRule, DrawnRange)> starts, ImmutableArray<(PersonStart, DrawnRange)> people, ImmutableArray<BoundFault> faults, BoundStates? states)
    {
        (Plan, Situation, _faults, _states) = (plan, situation, faults, states);
        _starts = [.. starts.Select(s => new BoundStart(s.Item1, s.Item2))];
        _people = [.. people.Select(p => (plan.Book.Roles[p.Item1.Role], p.Item1.Places.Select(plan.Ways.IndexOf).ToImmutableArray(), p.Item2))];
        Ranges = [.. states is null ? [] : new[] { states.Range }, .. _starts.Select(s => s.Range), .. _people.Select(p => p.Range), .. _faults.SelectMany(f => f.Ranges)];
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
        world.UseAnswers(Situation.Answers, draws.Seed, draws.Case);
        _states?.Draw(world, draws);
        foreach (BoundStart start in _starts)
        {
            start.Draw(world, draws);
        }

        foreach ((Role role, ImmutableArray<int> places, DrawnRange range) in _people)
        {
            world.AddPerson(role, places[(int)range.Value(draws)]);
        }

        foreach (BoundFault fault in _faults)
        {
            fault.Draw(world, draws);
        }
    }

    /// <inheritdoc cref="Apply(World, CaseDraws)"/>
    public void Apply(World world, ulong seed, ulong caseNumber) => Apply(world, new CaseDraws(seed, caseNumber));

    /// <summary>
    /// The situation of one case with nothing left to draw: what the case drew stands in it as if the author had written it. A fault that the case has not is left out.
    /// </summary>
    /// <param name="draws">Which case.</param>
    /// <param name="name">What it is called.</param>
    /// <param name="roadNumber">Of the case; null for a book without.</param>
    /// <param name="digits">Significant ones that numbers are rounded to, in the units in which they were written; at 17 nothing is lost.</param>
    public Situation Of(CaseDraws draws, string name, string? roadNumber, int digits = 17)
    {
        ArgumentNullException.ThrowIfNull(draws);
        return Situation with
        {
            Name = name,
            RoadNumbers = roadNumber is null ? [] : [roadNumber],
            Cards = [],
            States = null,
            Start = [.. _states is null ? [] : _states.Of(Situation.States!, draws), .. Situation.Start.Zip(_starts, (s, b) => Drawn(s, b.Range, draws, digits))],
            People = [.. Situation.People.Zip(_people, (p, b) => p with { Places = [p.Places[(int)b.Range.Value(draws)]] })],
            Faults = [.. _faults.Where(f => f.Happens.Value(draws) < f.Fault.Chance).Select(f => f.Of(draws, digits))],
        };
    }

    internal static StartValue Drawn(StartValue value, DrawnRange range, CaseDraws draws, int digits)
    {
        if (!range.Words.IsEmpty)
        {
            return value with { OneOf = [range.Words[(int)range.Value(draws)]] };
        }

        double number = range.Varies ? Rounded(range, range.Value(draws), digits) : value.From;
        return value with { From = number, To = number };
    }

    /// <summary>To so many digits in the range's own unit, and within the range.</summary>
    internal static double Rounded(DrawnRange range, double value, int digits)
    {
        Unit unit = range.Unit ?? UnitTable.One;
        double shown = double.Parse(unit.FromSi(value).ToString(FormattableString.Invariant($"G{digits}"), CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        return Math.Clamp(unit.ToSi(shown), range.From, range.To);
    }

    internal static DrawnRange RangeOf(int order, string name, StartValue value) =>
        new(order, name, value.From, value.To, value.Unit, value.OneOf.IsDefault ? [] : value.OneOf) { IsWhole = value.IsWhole };

    internal static DrawnRange Share(int order, string name) => new(order, name, 0, 1, UnitTable.Find("1"), []);
}
