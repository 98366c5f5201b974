using System.Collections.Immutable;
using Sightglass.Book.Model;
using Sightglass.Cards.Programs;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.World.Runs;

/// <summary>
/// All that a card worked in a situation may ever ask of the machine: what it looks at and reads, what must never be and must be in the end, and the hazards
/// where somebody may stand, touch or come past. What is started with, broken or operated bears on the outcome through these only.
/// </summary>
public static class AskedSignals
{
    /// <param name="plan">Whose names the programs use.</param>
    /// <param name="choices">The card's programs.</param>
    /// <param name="situation">Where people stand at the start.</param>
    public static ImmutableArray<Signal> Of(Plan plan, ImmutableArray<ProgramChoice> choices, Situation situation)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(situation);
        MarginCache margins = new();
        margins.Prepare(plan, choices, new double[choices.Max(c => c.Program.Names.Length)]);
        ImmutableArray<CardOp> ops = [.. choices.SelectMany(c => c.Program.Ops)];
        return
        [
            .. margins.All,
            .. ops.OfType<CardOp.Look>().Select(look => plan.Signs[look.Sign.Name]),
            .. ops.OfType<CardOp.Read>().SelectMany(read => read.Item.Candidates).Select(plan.ReadingOf).OfType<Signal>(),
            .. HazardsMet(plan, ops, situation),
        ];
    }

    private static IEnumerable<Signal> HazardsMet(Plan plan, ImmutableArray<CardOp> ops, Situation situation)
    {
        HashSet<string> touched = [.. ops.SelectMany(op => Touched(op)).Select(i => i.Name)];
        HashSet<string> places =
        [
            .. situation.People.SelectMany(p => p.Places),
            .. ops.OfType<CardOp.Go>().Select(go => go.Place.Name),
            .. ops.OfType<CardOp.Request>().SelectMany(r => r.What.Item.Candidates).SelectMany(i => i.Places),
        ];
        places.UnionWith(MayShut(plan, situation) ? plan.Book.Places.Keys : OnTheWay(plan, [.. places.Select(plan.Ways.IndexOf).Where(i => i >= 0)]));
        return plan.Book.Hazards.Values
            .Where(h => h.IsCritical && (h.Items.Any(touched.Contains) || (!h.OnTouch && h.Places.Any(places.Contains))))
            .Select(h => plan.Hazards.GetValueOrDefault(h.Name)).OfType<Signal>();
    }

    /// <summary>Whether people may have to go round something that the situation shuts: then they may come anywhere.</summary>
    private static bool MayShut(Plan plan, Situation situation) => situation.Faults.Any(f => f.Items.Any(i => plan.Access.GateAt(i) is not null));

    /// <summary>Names of the places that are passed between any two of some.</summary>
    private static HashSet<string> OnTheWay(Plan plan, ImmutableArray<int> places)
    {
        HashSet<string> passed = [];
        foreach (int to in places)
        {
            foreach (int from in places)
            {
                for (int here = plan.Ways.Next(from, to); here >= 0 && here != to; here = plan.Ways.Next(here, to))
                {
                    passed.Add(plan.Ways.Places[here].Name);
                }
            }
        }

        return passed;
    }

    private static ImmutableArray<Item> Touched(CardOp op) => op switch
    {
        CardOp.Set set => set.Item.Candidates,
        CardOp.Hold hold => hold.Item.Candidates,
        CardOp.Request request => request.What.Item.Candidates,
        _ => [],
    };
}
