using System.Runtime.CompilerServices;
using Sightglass.Cards.Programs;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;
using Sightglass.World.Watches;

namespace Sightglass.World.Runs;

/// <summary>Margins of a card's conditions, made once for each place they are looked from. For one thread and one plan.</summary>
public sealed class MarginCache
{
    private readonly Dictionary<(object Condition, int Place), Signal> _made = new(ByReference.Instance);

    /// <summary>The margin of what is looked for from a place (its number, −1 on the way).</summary>
    public Signal Of(Plan plan, Condition condition, int place, ReadOnlySpan<double> written)
    {
        ArgumentNullException.ThrowIfNull(plan);
        if (_made.TryGetValue((condition, place), out Signal? known))
        {
            return known;
        }

        Signal made = ConditionCompiler.Compile(plan, condition, place < 0 ? null : plan.Ways.Places[place].Name, written);
        if (!ConditionCompiler.DependsOnWritten(condition))
        {
            _made[(condition, place)] = made;
        }

        return made;
    }

    /// <summary>The margin of a result no longer being there.</summary>
    public Signal Broken(Plan plan, FactCondition done)
    {
        if (!_made.TryGetValue((done, -1), out Signal? known))
        {
            known = new NotSignal(Margin(plan, done));
            _made[(done, -1)] = known;
        }

        return known;
    }

    private static Signal Margin(Plan plan, FactCondition condition) => condition switch
    {
        FactCondition.Holds h => plan.Facts[h.Fact.Name],
        FactCondition.Not n => new NotSignal(Margin(plan, n.Inner)),
        FactCondition.All a => new AllSignal([.. a.Parts.Select(p => Margin(plan, p))]),
        FactCondition.Any a => new AnySignal([.. a.Parts.Select(p => Margin(plan, p))]),
        _ => throw new ArgumentException($"A fact of an unknown sort: {condition.GetType().Name}.", nameof(condition)),
    };

    /// <summary>Records compare their contents, which would take longer than making the margin.</summary>
    private sealed class ByReference : IEqualityComparer<(object Condition, int Place)>
    {
        public static readonly ByReference Instance = new();

        public bool Equals((object Condition, int Place) x, (object Condition, int Place) y) =>
            ReferenceEquals(x.Condition, y.Condition) && x.Place == y.Place;

        public int GetHashCode((object Condition, int Place) key) => (RuntimeHelpers.GetHashCode(key.Condition) * 397) ^ key.Place;
    }
}
