using System.Collections.Immutable;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;

namespace Sightglass.Trials.Consists;

/// <summary>Sets a train up as it would leave: cabs as the book says, cocks open where a hose is coupled and shut where none is, covers shut.</summary>
/// <param name="plan">Of the train.</param>
/// <param name="vehicles">From its head.</param>
/// <param name="joints">Between them.</param>
/// <param name="lead">The place of the leading machine.</param>
internal sealed class TrainSetting(Plan plan, ImmutableArray<CheckedVehicle> vehicles, ImmutableArray<TrainJoint> joints, int lead)
{
    private const string Pressure = "start pressure";

    private readonly List<StartValue> _start = [];

    /// <summary>As a situation of the train.</summary>
    public Situation Situation()
    {
        foreach (JointLine line in joints.SelectMany(j => j.Lines).Where(l => l is { State: LineState.NotCoupled, Coupling: not null }))
        {
            Stand(line.Coupling!.Name, line.Coupling.Positions[0]);
        }

        HashSet<string> coupled = [.. joints.SelectMany(j => j.Lines).Where(l => l.State == LineState.Coupled).SelectMany(l => new[] { l.Ahead!.Name, l.Behind!.Name })];
        foreach (CheckedVehicle vehicle in vehicles)
        {
            foreach (string name in vehicle.Class.Ends.Values.SelectMany(e => e.Joins.Values).Select(j => vehicle.Vehicle.NameOf(j.Item)).Where(plan.Book.Items.ContainsKey))
            {
                End(plan.Book.Items[name], coupled.Contains(name));
            }
        }

        for (int i = 0; i < vehicles.Length; i++)
        {
            MakingUp? made = vehicles[i].IsMachine ? plan.Book.MakingUp : null;
            ImmutableArray<Setting> usual = made is null ? [] : i == lead ? made.Lead : vehicles[i].Listed.IsDead ? made.Dead : made.Trail;
            foreach (Setting set in usual.Concat(vehicles[i].Listed.Stands))
            {
                Stand(vehicles[i].Vehicle.NameOf(set.Item), set.Position);
            }
        }

        return new() { Name = plan.Book.TrainInUse ?? "", Span = default, Train = plan.Book.TrainInUse, Start = [.. _start.GroupBy(s => s.Name).Select(g => g.Last())] };
    }

    /// <summary>Where each control was put: what is said last holds.</summary>
    public string? PositionOf(string item) => _start.LastOrDefault(s => s.Name == item)?.OneOf.FirstOrDefault();

    private void End(Item end, bool isCoupled)
    {
        foreach (Item cock in plan.Book.Items.Values.Where(i => i.Vehicle == end.Vehicle && i.Positions is ["closed", "open"] && (i.From?.Item == end.Name || i.To?.Item == end.Name)))
        {
            Stand(cock.Name, isCoupled ? "open" : "closed");
            Fill(end, isCoupled ? plan.Book.Items.GetValueOrDefault((cock.From?.Item == end.Name ? cock.To : cock.From)?.Item ?? "") : null);
        }

        if (end.Positions is ["open", "shut"])
        {
            Stand(end.Name, "shut");
        }
    }

    /// <summary>What stands open to a charged pipe is charged, and what is coupled to nothing is empty.</summary>
    private void Fill(Item hose, Item? pipe)
    {
        string name = $"pressure of {hose.Name}";
        if (plan.Starts.ContainsKey(name) && (pipe is null || pipe.Parameters.ContainsKey(Pressure)))
        {
            double pascal = pipe?.Parameters[Pressure].Number ?? 0;
            _start.Add(new(name, default) { From = pascal, To = pascal, Unit = UnitTable.SiOf(Dimension.Pressure) });
        }
    }

    private void Stand(string item, string position)
    {
        if (plan.Starts.TryGetValue(item, out StartRule? rule) && !rule.Choices.IsDefault && rule.Choices.Contains(position))
        {
            _start.Add(new(item, default) { OneOf = [position] });
        }
    }
}
