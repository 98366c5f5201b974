using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Formulas;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Model;
using Sightglass.Plant.Kinds;
using Sightglass.Plant.Kinds.Common;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Plans;

/// <summary>Builds a book into a plan.</summary>
public static class PlanCompiler
{
    /// <summary>The plan, or null when the book has errors as a plant; all of them are in <paramref name="found"/>.</summary>
    public static Plan? Compile(ClassBook book, DiagnosticList found)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(found);
        PlanBuilder builder = new(book, found);
        int errorsBefore = found.Count(d => d.Severity == Severity.Error);
        foreach (WorldInput input in WorldInput.All)
        {
            Slot slot = builder.SlotNamed(input.Name, input.Default);
            builder.Name(input.Name, input.Dimension, new SlotSignal(slot));
            builder.AddStart(new(input.Name, input.Dimension, -1, default, null, slot, []) { Least = input.Least, Greatest = input.Greatest });
        }

        Pass(builder, (kind, item) => kind.Declare(builder, item));
        Pass(builder, (kind, item) => kind.Connect(builder, item));
        ImmutableSortedDictionary<string, Signal> facts = Facts(book, builder);
        Pass(builder, (kind, item) => kind.Indicate(builder, item));
        Pass(builder, (_, item) => Interlock.Bind(builder, item));
        builder.Gear.Check();
        ImmutableSortedDictionary<string, Signal> signs = Conditions(builder, book.Signs.Values.Select(s => (s.Name, (string?)s.Formula, s.FormulaSpan, s.Vehicle)));
        ImmutableSortedDictionary<string, Signal> hazards = Conditions(builder, book.Hazards.Values.Select(h => (h.Name, h.Formula, h.FormulaSpan, h.Vehicle)));
        ImmutableSortedDictionary<string, PlanMeasure> measures = Measures(book, builder);
        Access access = Access.Of(builder);
        if (found.Count(d => d.Severity == Severity.Error) > errorsBefore)
        {
            return null;
        }

        ImmutableArray<Resolver> resolvers = [.. builder.Resolvers()];
        return new Plan(builder, new(() => [.. builder.Networks.Select(n => n.Build())]), new(() => new(builder)))
        {
            Book = book,
            NetworkNames = [.. builder.NetworkNames],
            Stepped = [.. Enumerable.Range(0, builder.Networks.Count)],
            Signals = [.. builder.Signals],
            Slots = [.. builder.Slots],
            Bindings = [.. builder.Bindings],
            Switches = [.. builder.Switches],
            Pulses = [.. builder.Pulses],
            Resolvers = resolvers,
            Items = builder.Plans.ToImmutableSortedDictionary(StringComparer.Ordinal),
            Starts = builder.Starts.ToImmutableSortedDictionary(StringComparer.Ordinal),
            Readings = Readings(builder),
            Facts = facts,
            Signs = signs,
            Hazards = hazards,
            Measures = measures,
            Ways = new(book),
            Access = access,
            AmountNames = [.. builder.AmountNames.Select(a => a.ToImmutableArray())],
        };
    }

    private static ImmutableSortedDictionary<string, Signal> Readings(PlanBuilder builder) =>
        builder.Plans.Values.Where(p => p.Shown is not null && p.Item.Reading is not null).ToImmutableSortedDictionary(p => p.Item.Name, Reading, StringComparer.Ordinal);

    private static Signal Reading(ItemPlan p) => p.Bias is { } bias && p.Stuck is { } stuck && p.Held is { } held
        ? new ReadingSignal(p.Shown!, bias, stuck, held, p.Item.Reading!.Minimum, p.Item.Reading.Maximum)
        : p.Shown!;

    /// <summary>In the order of the author's files, not of names: a name changed everywhere changes no bit of a result.</summary>
    private static void Pass(PlanBuilder builder, Action<KindBuilder, Item> build)
    {
        foreach (Item item in builder.Items)
        {
            if (KindLibrary.Find(item.Kind.Name) is { } kind)
            {
                builder.Begin(item);
                build(kind, item);
            }
        }
    }

    /// <summary>Facts may speak of facts declared anywhere in the book: those without unknown names are taken first, until none is left.</summary>
    private static ImmutableSortedDictionary<string, Signal> Facts(ClassBook book, PlanBuilder builder)
    {
        SortedDictionary<string, Signal> done = new(StringComparer.Ordinal);
        List<Fact> left = [.. book.FactsInOrder];
        while (left.Count > 0)
        {
            int before = left.Count;
            left.RemoveAll(fact => TryFact(fact, builder, done));
            if (left.Count == before)
            {
                left.ForEach(fact => builder.Read(fact.Formula, fact.FormulaSpan, FormulaKind.Condition, fact.Vehicle));
                break;
            }
        }

        return done.ToImmutableSortedDictionary(StringComparer.Ordinal);
    }

    private static bool TryFact(Fact fact, PlanBuilder builder, SortedDictionary<string, Signal> done)
    {
        DiagnosticList tried = new();
        if (FormulaParser.Parse(fact.Formula, fact.FormulaSpan, new TrialScope(VehicleScope.Of(fact.Vehicle, builder.Scope)), tried, FormulaKind.Condition) is not { } formula)
        {
            return false;
        }

        FormulaSignal signal = new(formula);
        builder.Name(fact.Name, Dimension.One, signal, isCondition: true);
        done[fact.Name] = signal;
        return true;
    }

    private static ImmutableSortedDictionary<string, PlanMeasure> Measures(ClassBook book, PlanBuilder builder)
    {
        MeasureScope scope = new(builder);
        SortedDictionary<string, PlanMeasure> done = new(StringComparer.Ordinal);
        foreach (Measure measure in book.Measures.Values.OrderBy(m => m.Span))
        {
            if (FormulaParser.Parse(measure.Formula, measure.FormulaSpan, scope, builder.Found, FormulaKind.Any) is { } formula)
            {
                done[measure.Name] = PlanMeasure.Of(measure, formula, scope);
            }
        }

        return done.ToImmutableSortedDictionary(StringComparer.Ordinal);
    }

    private static ImmutableSortedDictionary<string, Signal> Conditions(PlanBuilder builder, IEnumerable<(string Name, string? Formula, Span Span, Vehicle Vehicle)> rows)
    {
        SortedDictionary<string, Signal> done = new(StringComparer.Ordinal);
        foreach ((string name, string? text, Span span, Vehicle vehicle) in rows)
        {
            if (text is not null && builder.Read(text, span, FormulaKind.Condition, vehicle) is { } formula)
            {
                done[name] = new FormulaSignal(formula);
            }
        }

        return done.ToImmutableSortedDictionary(StringComparer.Ordinal);
    }
}
