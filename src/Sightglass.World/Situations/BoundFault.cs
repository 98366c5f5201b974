using System.Collections.Immutable;
using Sightglass.Basics.Time;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;

namespace Sightglass.World.Situations;

/// <summary>A fault of a situation with its draws.</summary>
internal sealed record BoundFault(FaultStart Fault, DrawnRange Happens, DrawnRange On, DrawnRange After, ImmutableArray<DrawnRange> Values)
{
    private ImmutableArray<FaultSlots> _slots = [];
    private ImmutableArray<ImmutableArray<int>> _places = [];

    /// <summary>All of them; the one for the chance only where there is a choice.</summary>
    public IEnumerable<DrawnRange> Ranges => (Fault.Chance < 1 ? [Happens] : Array.Empty<DrawnRange>()).Concat([On, After]).Concat(Values);

    /// <summary>The same with every name settled. Only after it was found to fit the plan.</summary>
    public BoundFault Settle(Plan plan)
    {
        ImmutableArray<FaultSlots> slots = [.. Fault.Items.Select(item => FaultSlots.Of(plan, item, Fault.Fault))];
        return this with { _slots = slots, _places = [.. slots.Select(s => Fault.Values.Select(v => s.IndexOf(v.Name)).ToImmutableArray())] };
    }

    /// <summary>The fault as one case has it: on one item, from a moment, with values.</summary>
    public FaultStart Of(CaseDraws draws, int digits)
    {
        double after = SituationStart.Rounded(After, After.Value(draws), digits);
        return Fault with
        {
            Items = [Fault.Items[(int)On.Value(draws)]],
            AfterFrom = after,
            AfterTo = after,
            Chance = 1,
            Values = [.. Fault.Values.Zip(Values, (v, r) => SituationStart.Drawn(v, r, draws, digits))],
        };
    }

    /// <summary>Puts it on the agenda of a world, where this case has it.</summary>
    public void Draw(World world, CaseDraws draws)
    {
        if (Happens.Value(draws) >= Fault.Chance)
        {
            return;
        }

        int on = (int)On.Value(draws);
        Span<double> values = world.AddFault(_slots[on], SimTime.FromSeconds(After.Value(draws)));
        for (int i = 0; i < Values.Length; i++)
        {
            values[_places[on][i]] = Values[i].Value(draws);
        }
    }
}
