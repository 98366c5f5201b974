using System.Collections.Immutable;
using Sightglass.Book.Model;

namespace Sightglass.Trials.Consists;

/// <summary>Finds what can be coupled between the vehicles of a train, what is, and what cannot be and why.</summary>
internal static class TrainJoints
{
    /// <param name="coupled">The train as one book.</param>
    /// <param name="vehicles">From its head.</param>
    public static ImmutableArray<TrainJoint> Of(ClassBook coupled, ImmutableArray<CheckedVehicle> vehicles) =>
        [.. Enumerable.Range(0, vehicles.Length - 1).Select(i => new TrainJoint(i, [.. Lines(coupled, vehicles, i)]))];

    private static IEnumerable<JointLine> Lines(ClassBook coupled, ImmutableArray<CheckedVehicle> vehicles, int at)
    {
        (CheckedVehicle ahead, CheckedVehicle behind) = (vehicles[at], vehicles[at + 1]);
        var there = Joins(ahead, rear: true);
        var here = Joins(behind, rear: false);
        ImmutableArray<LineUse> uses = coupled.MakingUp?.Lines ?? [];
        bool machines = vehicles.Take(at + 1).Any(v => v.IsMachine) && vehicles.Skip(at + 1).Any(v => v.IsMachine);
        return there.Keys.Union(here.Keys).Where(l => machines || uses.FirstOrDefault(u => u.Line == l) is not { BetweenMachines: true })
            .OrderBy(l => Rank(uses, l)).ThenBy(l => l, StringComparer.Ordinal)
            .Select(l => Line(coupled, l, ahead, behind));
    }

    /// <summary>The place of a line in the order of coupling.</summary>
    public static int Rank(ImmutableArray<LineUse> uses, string line)
    {
        int at = uses.Select(u => u.Line).ToList().IndexOf(line);
        return at < 0 ? uses.Length : at;
    }

    private static JointLine Line(ClassBook coupled, string line, CheckedVehicle ahead, CheckedVehicle behind)
    {
        Item? first = ItemOf(coupled, ahead, line, rear: true), second = ItemOf(coupled, behind, line, rear: false);
        JointLine found = new(line, LineState.Lacking) { Ahead = first, Behind = second };
        if (first is null || second is null)
        {
            CheckedVehicle lacks = first is null ? ahead : behind;
            bool turnable = ItemOf(coupled, lacks, line, rear: first is not null) is not null;
            return found with { Lacks = lacks.Vehicle, State = turnable ? LineState.WrongEnd : LineState.Lacking };
        }

        Item? coupling = coupled.Items.Values.FirstOrDefault(i => Ends(i, first.Name, second.Name) || Ends(i, second.Name, first.Name));
        return found with { Coupling = coupling, State = coupling is null ? LineState.Unlike : ahead.Listed.NotCoupled.Any(n => n.Line == line) ? LineState.NotCoupled : LineState.Coupled };

        bool Ends(Item item, string from, string to) => item.From?.Item == from && item.To?.Item == to && item.Kind.Name == first.Kind.CoupledBy;
    }

    private static ImmutableSortedDictionary<string, (string Item, Basics.Diagnostics.Span Span)> Joins(CheckedVehicle vehicle, bool rear) =>
        vehicle.End(rear)?.Joins ?? ImmutableSortedDictionary<string, (string Item, Basics.Diagnostics.Span Span)>.Empty;

    private static Item? ItemOf(ClassBook coupled, CheckedVehicle vehicle, string line, bool rear) =>
        Joins(vehicle, rear).TryGetValue(line, out (string Item, Basics.Diagnostics.Span Span) joined) ? coupled.Items.GetValueOrDefault(vehicle.Vehicle.NameOf(joined.Item)) : null;
}
