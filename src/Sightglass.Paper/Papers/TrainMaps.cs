using System.Collections.Immutable;
using Sightglass.Basics.Language;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Model;
using Sightglass.Drawing.Trains;
using Sightglass.Trials.Consists;

namespace Sightglass.Paper.Papers;

/// <summary>A train that was checked as a map: its vehicles, their voltage and brakes, its lines.</summary>
public static class TrainMaps
{
    public static TrainMap Of(TrainCheckResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return new()
        {
            Title = Told(result),
            Book = result.Book,
            Vehicles = [.. result.Vehicles.Select((v, i) => new TrainMapVehicle(Say.Begin(TrainWords.Name(v)), TrainWords.Kind(v, result.Book), v.Class.Length, i == result.Lead))],
            Rows = [.. Rows(result)],
            Lines = [.. LinesOf(result).Select(l => Line(result, l))],
        };
    }

    /// <summary>What the map shows, for people who cannot see it.</summary>
    public static string Told(TrainCheckResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return Say.With($"{Say.List(result.Vehicles.Select(TrainWords.Name))}, from the head of the train. {string.Join(" ", LinesOf(result).Select(l => LineTold(result, l)))}");
    }

    private static IEnumerable<string> LinesOf(TrainCheckResult result)
    {
        ImmutableArray<string> named = [.. result.Book.MakingUp?.Lines.Select(l => l.Line) ?? []];
        return result.Joints.SelectMany(j => j.Lines).Select(l => l.Line).Distinct(StringComparer.Ordinal).OrderBy(l => named.IndexOf(l) is >= 0 and var at ? at : named.Length).ThenBy(l => l, StringComparer.Ordinal);
    }

    private static string LineTold(TrainCheckResult result, string line)
    {
        TrainJoint[] broken = [.. result.Joints.Where(j => j.Lines.Any(l => l.Line == line && l.State != LineState.Coupled))];
        return broken.Length == 0
            ? Say.With($"{Say.Begin(Say.Book(line))}: through.")
            : Say.With($"{Say.Begin(Say.Book(line))}: not through {Say.List(broken.Select(j => TrainWords.Between(result, j.Ahead)))}.");
    }

    private static IEnumerable<TrainMapRow> Rows(TrainCheckResult result)
    {
        if (result.Vehicles.All(v => v.Mass is not null))
        {
            yield return new(Say.It("Mass"), [.. result.Vehicles.Select(v => (QuantityFormat.Text(v.Mass!.Value, UnitTable.Get("t"), 100), false))]);
        }

        if (result.Brakes is { } brakes)
        {
            yield return new(Say.It("Axles braked"), [.. brakes.Vehicles.Select(v => (Say.With($"{v.WorkingAxles:0.#} of {v.Vehicle.Axles}"), v.WorkingAxles < v.Vehicle.Axles))]);
        }

        if (result.Power is { Loads.IsEmpty: false } power)
        {
            yield return new(Say.It("Voltage"), [.. result.Vehicles.Select(v => Voltage(power, v))]);
        }
    }

    private static (string Value, bool IsBad) Voltage(TrainPower power, CheckedVehicle vehicle)
    {
        LoadReading[] loads = [.. power.Loads.Where(l => l.Load.Vehicle.Index == vehicle.Vehicle.Index)];
        return loads.Length == 0 ? ("", false) : (TrainWords.Volts(loads.Min(l => l.Volts)), loads.Any(l => !l.Works || l.IsTooHigh));
    }

    private static TrainMapLine Line(TrainCheckResult result, string line) => new(
        Say.Begin(Say.Book(line)),
        result.Joints.SelectMany(j => j.Lines).Where(l => l.Line == line).SelectMany(l => new[] { l.Ahead, l.Behind }).OfType<Item>().Select(i => MediumOf(result, i)).FirstOrDefault("plain"),
        [.. result.Vehicles.Select(v => (Has(v, line, rear: false), Has(v, line, rear: true)))],
        [.. result.Joints.Select(j => j.Lines.FirstOrDefault(l => l.Line == line)?.State switch
        {
            null => JointMark.None,
            LineState.Coupled => JointMark.Through,
            LineState.NotCoupled => JointMark.Open,
            LineState.Unlike => JointMark.Wrong,
            _ => JointMark.Ends,
        })]);

    private static bool Has(CheckedVehicle vehicle, string line, bool rear) => vehicle.End(rear)?.Joins.ContainsKey(line) == true;

    private static string MediumOf(TrainCheckResult result, Item item) => item.System is { } system && result.Book.Systems.TryGetValue(system, out SystemSheet? sheet) ? sheet.Medium : item.Kind.Medium ?? "plain";
}
