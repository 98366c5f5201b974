using System.Collections.Immutable;
using Sightglass.Book.Model;
using Sightglass.Cards.Programs;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.World.Watches;

/// <summary>
/// Turns what a card looks for into a margin that the steps can be watched with. A reading's rounding becomes a threshold on the
/// unrounded reading: it shows at least v from half a step of the scale below v on.
/// </summary>
public static class ConditionCompiler
{
    private const double Slack = 1e-9;

    /// <param name="plan">Whose names the condition uses.</param>
    /// <param name="condition">What is looked for.</param>
    /// <param name="place">Where the looker stands: settles which of several items is meant.</param>
    /// <param name="written">Where the run writes numbers that are read; comparisons between them are settled when the margin is asked for.</param>
    public static Signal Compile(Plan plan, Condition condition, string? place, double[] written) => condition switch
    {
        Condition.Shows s => Shows(plan, s.Item, s.Comparison, s.Value),
        Condition.ShowsWord w => new AllSignal([Shows(plan, w.Item, Comparison.AtLeast, w.From), Shows(plan, w.Item, Comparison.AtMost, w.To)]),
        Condition.Lit l => plan.Items[l.Item.Name].Lit ?? throw new ArgumentException($"'{l.Item.Name}' is no lamp.", nameof(condition)),
        Condition.PositionIs p => new PositionSignal(PositionOf(plan, p.Item), p.Item.Positions.IndexOf(p.Position)),
        Condition.SignHolds s => SeenFrom(place, s.Sign) ? plan.Signs[s.Sign.Name] : new ConstantSignal(-1),
        Condition.Compare or Condition.Known => new WrittenSignal(condition, written),
        Condition.OneInReach o => Compile(plan, InReach(o.Cases, place), place, written),
        Condition.Not n => new NotSignal(Compile(plan, n.Inner, place, written)),
        Condition.All a => new AllSignal(Each(plan, a.Parts, place, written)),
        Condition.Any a => new AnySignal(Each(plan, a.Parts, place, written)),
        _ => throw new ArgumentException($"A condition of an unknown sort: {condition.GetType().Name}.", nameof(condition)),
    };

    /// <summary>Whether it may be another margin from another place.</summary>
    public static bool DependsOnPlace(Condition condition) => condition switch
    {
        Condition.SignHolds s => !s.Sign.Places.IsDefaultOrEmpty,
        Condition.OneInReach => true,
        Condition.Not n => DependsOnPlace(n.Inner),
        Condition.All a => a.Parts.Any(DependsOnPlace),
        Condition.Any a => a.Parts.Any(DependsOnPlace),
        _ => false,
    };

    /// <summary>Whether it speaks of numbers written down, so that it is another margin in every run.</summary>
    public static bool DependsOnWritten(Condition condition) => condition switch
    {
        Condition.Compare or Condition.Known => true,
        Condition.Not n => DependsOnWritten(n.Inner),
        Condition.All a => a.Parts.Any(DependsOnWritten),
        Condition.Any a => a.Parts.Any(DependsOnWritten),
        Condition.OneInReach o => o.Cases.Any(c => DependsOnWritten(c.Condition)),
        _ => false,
    };

    /// <summary>The number on the instrument for a reading with every digit.</summary>
    public static double Rounded(Reading reading, double value) =>
        reading.Resolution > 0 ? Math.Floor((value / reading.Resolution) + 0.5) * reading.Resolution : value;

    /// <summary>Where you stand is what you know: a sign of which no place is listed is noticed everywhere, others from their places only.</summary>
    private static bool SeenFrom(string? place, Sign sign) =>
        sign.Places.IsDefaultOrEmpty || (place is not null && sign.Places.Contains(place, StringComparer.Ordinal));

    private static Condition InReach(ImmutableArray<ReachCase> cases, string? place)
    {
        foreach (ReachCase one in cases)
        {
            if (place is not null && one.Item.Places.Contains(place, StringComparer.Ordinal))
            {
                return one.Condition;
            }
        }

        return cases[0].Condition;
    }

    private static ImmutableArray<Signal> Each(Plan plan, ImmutableArray<Condition> parts, string? place, double[] written)
    {
        ImmutableArray<Signal>.Builder signals = ImmutableArray.CreateBuilder<Signal>(parts.Length);
        foreach (Condition part in parts)
        {
            signals.Add(Compile(plan, part, place, written));
        }

        return signals.MoveToImmutable();
    }

    private static Slot PositionOf(Plan plan, Item item) =>
        plan.Items[item.Name].Position ?? throw new ArgumentException($"'{item.Name}' has no positions.", nameof(item));

    private static Signal Shows(Plan plan, Item item, Comparison comparison, double value)
    {
        Signal reading = plan.ReadingOf(item) ?? throw new ArgumentException($"'{item.Name}' shows nothing.", nameof(item));
        double step = item.Reading!.Resolution;
        double inSteps = step > 0 ? value / step : value;
        return comparison switch
        {
            Comparison.AtLeast => From(Math.Ceiling(inSteps - Slack)),
            Comparison.AtMost => UpTo(Math.Floor(inSteps + Slack)),
            Comparison.MoreThan => From(Math.Floor(inSteps + Slack) + 1),
            Comparison.LessThan => UpTo(Math.Ceiling(inSteps - Slack) - 1),
            Comparison.Exactly => new AllSignal([From(Math.Round(inSteps)), UpTo(Math.Round(inSteps))]),
            _ => throw new ArgumentOutOfRangeException(nameof(comparison), comparison, "Not a comparison."),
        };

        Signal From(double steps) => new MarginSignal(reading, step > 0 ? (steps - 0.5) * step : value, 1);

        Signal UpTo(double steps) => new MarginSignal(reading, step > 0 ? (steps + 0.5) * step : value, -1);
    }
}
