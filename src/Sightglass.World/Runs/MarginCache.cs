using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using Sightglass.Cards.Programs;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;
using Sightglass.World.Watches;

namespace Sightglass.World.Runs;

/// <summary>Margins of a card's conditions, made once for each place they are looked from. For one thread and one plan.</summary>
public sealed class MarginCache
{
    private readonly Dictionary<(object Condition, int Place, double[]? Written), Signal> _made = new(ByReference.Instance);

    /// <summary>For conditions that are the same wherever the looker stands.</summary>
    private const int AnyPlace = -2;

    private readonly Dictionary<(string Form, string Name, string Other), string> _said = [];

    /// <summary>The margin of what is looked for from a place (its number, −1 on the way).</summary>
    /// <param name="written">Where the run writes numbers down: a condition on them is another margin in every run.</param>
    public Signal Of(Plan plan, Condition condition, int place, double[] written)
    {
        ArgumentNullException.ThrowIfNull(plan);
        if (_made.TryGetValue((condition, AnyPlace, null), out Signal? known)
            || _made.TryGetValue((condition, place, null), out known)
            || _made.TryGetValue((condition, AnyPlace, written), out known)
            || _made.TryGetValue((condition, place, written), out known))
        {
            return known;
        }

        bool ofRun = ConditionCompiler.DependsOnWritten(condition);
        Signal made = ConditionCompiler.Compile(plan, condition, place < 0 ? null : plan.Ways.Places[place].Name, written);
        made = ofRun ? made : new RememberedSignal(made);
        _made[(condition, ConditionCompiler.DependsOnPlace(condition) ? place : AnyPlace, ofRun ? written : null)] = made;
        return made;
    }

    /// <summary>Those made so far.</summary>
    internal IEnumerable<Signal> All => _made.Values;

    /// <summary>Makes every margin that a run may ask for, so that none is made while it runs.</summary>
    internal void Prepare(Plan plan, ImmutableArray<ProgramChoice> choices, double[] written)
    {
        foreach (ProgramChoice choice in choices)
        {
            foreach (Condition condition in ConditionsOf(choice))
            {
                for (int place = -1; place < (ConditionCompiler.DependsOnPlace(condition) ? plan.Ways.Places.Length : 0); place++)
                {
                    Of(plan, condition, place, written);
                }
            }

            if (choice.Program.DoneWhen is { } done)
            {
                Broken(plan, done, written);
            }

            foreach (FactCondition never in choice.Program.MustNever)
            {
                Of(plan, never, written);
            }
        }
    }

    private static IEnumerable<Condition> ConditionsOf(ProgramChoice choice) =>
        choice.Program.Ops.Select(op => op switch
        {
            CardOp.Check c => c.Condition,
            CardOp.If i => i.Condition,
            CardOp.WaitUntil w => w.Condition,
            CardOp.Hold h => h.Until,
            CardOp.Repeat r => r.Until,
            _ => null,
        }).Append(choice.When).Append(choice.Program.UseWhen).OfType<Condition>();

    /// <summary>What a card failed of, said with names from the book and put together once.</summary>
    /// <param name="form">A text with <c>{0}</c> and <c>{1}</c> for the names.</param>
    internal string Say(string form, string name, string other = "")
    {
        if (!_said.TryGetValue((form, name, other), out string? said))
        {
            said = form.Replace("{0}", name, StringComparison.Ordinal).Replace("{1}", other, StringComparison.Ordinal);
            _said[(form, name, other)] = said;
        }

        return said;
    }

    /// <summary>The margin of what must never be, or must be in the end.</summary>
    /// <param name="plan">Whose facts it names.</param>
    /// <param name="condition">One of the card's own.</param>
    /// <param name="written">Where the run writes numbers down: what speaks of them is another margin in every run.</param>
    public Signal Of(Plan plan, FactCondition condition, double[] written)
    {
        if (!_made.TryGetValue((condition, AnyPlace, null), out Signal? known) && !_made.TryGetValue((condition, AnyPlace, written), out known))
        {
            bool ofRun = DependsOnWritten(condition);
            known = Margin(plan, condition, written);
            known = ofRun ? known : new RememberedSignal(known);
            _made[(condition, AnyPlace, ofRun ? written : null)] = known;
        }

        return known;
    }

    /// <summary>The margin of a result no longer being there.</summary>
    public Signal Broken(Plan plan, FactCondition done, double[] written)
    {
        if (!_made.TryGetValue((done, -1, null), out Signal? known) && !_made.TryGetValue((done, -1, written), out known))
        {
            known = new NotSignal(Of(plan, done, written));
            _made[(done, -1, DependsOnWritten(done) ? written : null)] = known;
        }

        return known;
    }

    private static bool DependsOnWritten(FactCondition condition) => condition switch
    {
        FactCondition.Number => true,
        FactCondition.Not not => DependsOnWritten(not.Inner),
        FactCondition.All all => all.Parts.Any(DependsOnWritten),
        FactCondition.Any any => any.Parts.Any(DependsOnWritten),
        _ => false,
    };

    private static Signal Margin(Plan plan, FactCondition condition, double[] written) => condition switch
    {
        FactCondition.Holds h => plan.Facts[h.Fact.Name],
        FactCondition.Number n => ConditionCompiler.Compile(plan, n.Condition, null, written),
        FactCondition.Not n => new NotSignal(Margin(plan, n.Inner, written)),
        FactCondition.All a => new AllSignal([.. a.Parts.Select(p => Margin(plan, p, written))]),
        FactCondition.Any a => new AnySignal([.. a.Parts.Select(p => Margin(plan, p, written))]),
        _ => throw new ArgumentException($"A fact of an unknown sort: {condition.GetType().Name}.", nameof(condition)),
    };

    /// <summary>Records compare their contents, which would take longer than making the margin.</summary>
    private sealed class ByReference : IEqualityComparer<(object Condition, int Place, double[]? Written)>
    {
        public static readonly ByReference Instance = new();

        public bool Equals((object Condition, int Place, double[]? Written) x, (object Condition, int Place, double[]? Written) y) =>
            ReferenceEquals(x.Condition, y.Condition) && x.Place == y.Place && ReferenceEquals(x.Written, y.Written);

        public int GetHashCode((object Condition, int Place, double[]? Written) key) =>
            (RuntimeHelpers.GetHashCode(key.Condition) * 397) ^ key.Place ^ RuntimeHelpers.GetHashCode(key.Written);
    }
}
