using System.Globalization;
using Sightglass.Basics.Language;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Model;
using Sightglass.Plant.Calculators.Sheets;

namespace Sightglass.Trials.Consists;

/// <summary>Words and numbers of a check of a train, in the language that is spoken; numbers in both systems of units.</summary>
public static class TrainWords
{
    /// <summary>What a vehicle is called: <c>car 3</c>, <c>unit 2</c>, <c>the machine</c>.</summary>
    public static string Name(CheckedVehicle vehicle)
    {
        ArgumentNullException.ThrowIfNull(vehicle);
        return vehicle.Vehicle.IsTheMachine ? Say.It("the machine") : Say.Book(vehicle.Vehicle.Name);
    }

    /// <summary>What it is, and its number: <c>coach 2611, turned</c>.</summary>
    public static string Kind(CheckedVehicle vehicle, ClassBook book)
    {
        ArgumentNullException.ThrowIfNull(vehicle);
        ArgumentNullException.ThrowIfNull(book);
        string of = Say.Book(vehicle.IsMachine ? book.Title : vehicle.Listed.Listed.Class);
        string kind = vehicle.Listed.Number.Length > 0 ? $"{of} {vehicle.Listed.Number}" : of;
        kind = vehicle.Listed.IsDead ? Say.With($"{kind}, dead") : kind;
        return vehicle.Listed.Listed.IsTurned ? Say.With($"{kind}, turned") : kind;
    }

    /// <summary>Between which vehicles a joint is: <c>between the machine and car 1</c>.</summary>
    public static string Between(TrainCheckResult result, int ahead)
    {
        ArgumentNullException.ThrowIfNull(result);
        return Say.With($"between {Name(result.Vehicles[ahead])} and {Name(result.Vehicles[ahead + 1])}");
    }

    /// <summary>What the check comes to, in a few words.</summary>
    public static string Verdict(FindingWeight verdict) => verdict switch
    {
        FindingWeight.Stops => Say.It("Not fit to leave."),
        FindingWeight.Mend => Say.It("Not as it should be: mend it, or have those decide who may."),
        _ => Say.It("Nothing found that keeps it from leaving."),
    };

    /// <summary>Why, and who decides.</summary>
    public static string Because(TrainCheckResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        int stops = result.Findings.Count(f => f.Weight == FindingWeight.Stops), mend = result.Findings.Count(f => f.Weight == FindingWeight.Mend);
        return (stops, mend) switch
        {
            (0, 0) => Say.It("This is worked out from the book, not seen at the train: walk it, and make the brake test."),
            (0, _) => Say.Of(mend, $"One thing is to be mended or decided.", $"{mend} things are to be mended or decided."),
            (_, 0) => Say.Of(stops, $"One thing stops it.", $"{stops} things stop it."),
            _ => Say.With($"{Say.Of(stops, $"One thing stops it.", $"{stops} things stop it.")} {Say.Of(mend, $"One more is to be mended or decided.", $"{mend} more are to be mended or decided.")}"),
        };
    }

    /// <summary>What a finding asks for, in one word.</summary>
    public static string Weight(FindingWeight weight) => weight switch
    {
        FindingWeight.Stops => Say.As("finding of a train", "Stops it"),
        FindingWeight.Mend => Say.As("finding of a train", "Mend"),
        _ => Say.As("finding of a train", "Mind"),
    };

    /// <summary>How a line stands, in few words.</summary>
    public static string State(JointLine line)
    {
        ArgumentNullException.ThrowIfNull(line);
        return line.State switch
        {
            LineState.Coupled => Say.As("line of a train", "coupled"),
            LineState.NotCoupled => Say.As("line of a train", "not coupled"),
            LineState.WrongEnd => Say.As("line of a train", "at the other end"),
            LineState.Unlike => Say.As("line of a train", "cannot be coupled"),
            _ => Say.As("line of a train", "not there"),
        };
    }

    /// <summary>To a tenth, from a thousand tons on to one.</summary>
    public static string Tons(double kilograms) => kilograms < 1e6 ? Both(kilograms, "t", 0.1, 0.1) : Both(kilograms, "t", 1, 1);

    public static string Force(double newtons) => Both(newtons, "kN", 1, 100);

    public static string Power(double watts) => Both(watts, "kW", 1, 1);

    public static string Speed(double speed) => Both(speed, "mph", 1, 1);

    public static string Length(double metres) => Both(metres, "m", 1, 1);

    public static string Volts(double volts) => QuantityFormat.Text(volts, UnitTable.Get("V"), 1);

    public static string Amperes(double amperes) => QuantityFormat.Text(amperes, UnitTable.Get("A"), 1);

    public static string Percent(double share) => string.Create(CultureInfo.InvariantCulture, $"{Math.Floor((share * 1000) + 1e-9) / 10:0.#}\u202F%");

    /// <summary>A value in a unit and in that of the other side of the border.</summary>
    /// <param name="si">The value.</param>
    /// <param name="unit">In which it is said first.</param>
    /// <param name="step">Least step in that unit.</param>
    /// <param name="otherStep">Least step in the other one.</param>
    private static string Both(double si, string unit, double step, double otherStep)
    {
        Unit first = UnitTable.Get(unit);
        string text = QuantityFormat.Text(si, first, step * first.Factor);
        return UnitPairs.Other(first) is { } other ? $"{text} ({QuantityFormat.Text(si, other, otherStep * other.Factor)})" : text;
    }
}
