using System.Collections.Immutable;
using Sightglass.Book.Consists;
using Sightglass.Book.Model;
using Sightglass.Network.Laws.Common;
using Sightglass.Plant.Calculators;
using Sightglass.Plant.Calculators.Running;

namespace Sightglass.Trials.Consists;

/// <summary>Works out what a train weighs, pulls and holds, with the calculators' own formulas.</summary>
internal static class TrainPulling
{
    /// <summary>lb for each short ton of train that stands, when it starts: what the manual takes off for the locomotive, taken for every vehicle (common practice, no source).</summary>
    private const double StartPounds = 20;

    /// <summary>mph at which rolling resistance is taken for tonnage.</summary>
    private const double Crawl = 10;

    private const double Pound = 4.4482216152605;
    private const double ShortTon = 2000 * 0.45359237;

    /// <param name="consist">Its way.</param>
    /// <param name="vehicles">From the head, each with its mass.</param>
    /// <param name="answers">What its machines answer.</param>
    /// <param name="power">Its power line.</param>
    /// <param name="brakes">N with its brakes set in full.</param>
    public static TrainPull Of(Consist consist, ImmutableArray<CheckedVehicle> vehicles, ImmutableArray<CommandAnswers> answers, TrainPower power, double brakes)
    {
        int[] pulling = [.. Enumerable.Range(0, vehicles.Length).Where(i => vehicles[i].IsLive && answers.Where(a => a.Command.Pulls).All(a => a.AnsweredBy(i)))];
        double mass = vehicles.Sum(v => v.Mass!.Value), units = pulling.Sum(i => vehicles[i].Mass!.Value);
        double weight = mass * Physical.Gravity;
        double driven = pulling.Sum(i => vehicles[i].Mass!.Value * (vehicles[i].Class.Hauling?.DrivenAxles ?? 0) / vehicles[i].Axles) * Physical.Gravity;
        double adhesion = TractiveEffort.AdhesionNewtons(driven, consist.Adhesion);
        double watts = pulling.Sum(i => Rail(vehicles[i], power));
        double[] resistance = [0, 0, 0];
        foreach (CheckedVehicle vehicle in vehicles)
        {
            double[] own = Sheet(vehicle);
            for (int k = 0; k < resistance.Length; k++)
            {
                resistance[k] += own[k];
            }
        }

        double track = weight * TrackResistance.GradeShare(consist.Grade + TrackResistance.GradeOfCurve(consist.Curve));
        double grade = ParkingHold.Force(weight, consist.Grade);
        double drawbar = Tonnage.DrawbarPounds(adhesion / Pound, units / ShortTon);
        return new()
        {
            Mass = mass,
            Trailing = mass - units,
            Pulling = [.. pulling],
            Adhesion = adhesion,
            Power = watts,
            ToStart = (StartPounds * Pound * mass / ShortTon) + track,
            Tonnage = Math.Max(0, Tonnage.Tons(drawbar, 1, Rolling(vehicles, pulling), consist.Grade * 100, consist.Curve)) * ShortTon,
            BalanceSpeed = watts > 0 ? BalanceSpeed.MetresPerSecond(watts, resistance, track, adhesion) : 0,
            GradeForce = grade,
            BrakeForce = brakes,
            HandBrakes = HandBrakes(vehicles, grade),
        };
    }

    /// <summary>W at the rail of a machine that gives what it can, less what it gives the train.</summary>
    private static double Rail(CheckedVehicle vehicle, TrainPower power)
    {
        double train = power.Sources.Where(s => s.Source.Vehicle.Index == vehicle.Vehicle.Index).Sum(s => Math.Max(0, s.Watts));
        return vehicle.Class.Hauling is { Power: { } all, Efficiency: var efficiency } ? Math.Max(0, all - train) * efficiency : 0;
    }

    private static double[] Sheet(CheckedVehicle vehicle)
    {
        Hauling running = vehicle.Class.Hauling ?? new(default);
        return FormOf(running).Sheet(vehicle.Mass!.Value, running.Axles, running.Resistance == ResistanceSort.Modified ? null : running.Front);
    }

    private static ResistanceForm FormOf(Hauling running) => running.Resistance switch
    {
        ResistanceSort.Locomotive => ResistanceForm.Locomotive1926,
        ResistanceSort.Freight => ResistanceForm.Freight1926,
        ResistanceSort.Modified => ResistanceForm.Modified(),
        _ => ResistanceForm.Passenger1926,
    };

    /// <summary>lb for each short ton of what hangs on, at a crawl.</summary>
    private static double Rolling(ImmutableArray<CheckedVehicle> vehicles, int[] pulling)
    {
        CheckedVehicle[] cars = [.. vehicles.Where((_, i) => !pulling.Contains(i))];
        double tons = cars.Sum(c => c.Mass!.Value) / ShortTon;
        double newtons = cars.Select(Sheet).Sum(s => Network.Laws.Motion.SpeedResistance.Newtons(s, Crawl * 0.44704));
        return tons > 0 ? newtons / Pound / tons : 0;
    }

    private static ImmutableArray<int>? HandBrakes(ImmutableArray<CheckedVehicle> vehicles, double grade)
    {
        const double margin = 1.2;
        List<int> set = [];
        double held = 0;
        for (int i = 0; i < vehicles.Length && held < margin * grade; i++)
        {
            if (vehicles[i].Class.Hauling?.HandBrake is { } force)
            {
                set.Add(i);
                held += force;
            }
        }

        return held >= margin * grade ? [.. set] : null;
    }
}
