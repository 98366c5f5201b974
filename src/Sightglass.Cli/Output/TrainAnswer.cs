using System.Collections.Immutable;
using Sightglass.Book.Model;
using Sightglass.Trials.Consists;

namespace Sightglass.Cli.Output;

/// <summary>A train that was checked, for a program. Sentences follow the language; names and words of closed sets do not.</summary>
internal sealed record TrainAnswer(
    string Train, string Verdict, IReadOnlyList<TrainAnswer.Finding> Findings, IReadOnlyList<TrainAnswer.Vehicle> Vehicles, IReadOnlyList<TrainAnswer.Line> Lines, IReadOnlyList<TrainAnswer.Step> Order,
    double? BrakesShare, IReadOnlyList<TrainAnswer.Current> Jumpers, IReadOnlyList<TrainAnswer.Source> Sources, IReadOnlyList<TrainAnswer.Command> Commands, TrainAnswer.Pull? Pulls)
{
    public static TrainAnswer Of(TrainCheckResult r) => new(
        r.Consist.Title,
        Word(r.Verdict),
        [.. r.Findings.Select(f => new Finding(Word(f.Weight), f.Vehicle is { } at ? Name(r, at) : null, CalcText.Plain(f.Says())))],
        [.. r.Vehicles.Select((v, i) => VehicleOf(r, v, i))],
        [.. r.Joints.SelectMany(j => j.Lines.Select(l => new Line(Name(r, j.Ahead), Name(r, j.Ahead + 1), l.Line, Word(l.State), l.Coupling?.Name)))],
        [.. r.Order.Select(s => new Step(s.Line, [.. s.Joints.Select(j => Name(r, j))], s.Coupling.Authority?.Who ?? [], s.Coupling.Authority?.Permission, [.. s.Protections.Select(p => p.Name)]))],
        r.Brakes?.Share,
        [.. (r.Power?.Jumpers ?? []).Select(j => new Current(j.Item.Name, j.Amperes, j.Rated))],
        [.. (r.Power?.Sources ?? []).Select(s => new Source(s.Source.Name, s.Watts, s.Power))],
        [.. r.Commands.Select(c => new Command(c.Command.Name, [.. c.Units.Where(u => u.Answers).Select(u => Name(r, u.Vehicle))], [.. c.Units.Where(u => !u.Answers).Select(u => Name(r, u.Vehicle))]))],
        r.Pull is { } p ? PullOf(r, p) : null);

    private static Vehicle VehicleOf(TrainCheckResult r, CheckedVehicle v, int at)
    {
        LoadReading[] loads = [.. (r.Power?.Loads ?? []).Where(l => l.Load.Vehicle.Index == at)];
        return new(Name(r, at), v.Listed.Listed.Class, v.Listed.Number.Length > 0 ? v.Listed.Number : null, v.Listed.Listed.IsTurned, v.Mass, v.Axles, r.Brakes?.Vehicles[at].WorkingAxles, loads.Length > 0 ? loads.Min(l => l.Volts) : null);
    }

    private static Pull PullOf(TrainCheckResult r, TrainPull p) =>
        new(p.Mass, p.Trailing, [.. p.Pulling.Select(i => Name(r, i))], p.ToStart, p.Adhesion, p.Power, p.Tonnage, p.BalanceSpeed, p.GradeForce, p.BrakeForce, p.HandBrakes is { } set ? [.. set.Select(i => Name(r, i))] : null);

    private static string Name(TrainCheckResult r, int at) => r.Vehicles[at].Vehicle.IsTheMachine ? TrainVehicle.ThisMachine : r.Vehicles[at].Vehicle.Name;

    private static string Word(FindingWeight weight) => weight switch { FindingWeight.Stops => "stops", FindingWeight.Mend => "mend", _ => "mind" };

    private static string Word(LineState state) => state switch { LineState.Coupled => "coupled", LineState.NotCoupled => "not coupled", LineState.WrongEnd => "wrong end", LineState.Unlike => "cannot be coupled", _ => "lacking" };

    /// <summary>What was found.</summary>
    internal sealed record Finding(string Weight, string? Vehicle, string Says);

    /// <summary>A vehicle, from the head.</summary>
    internal sealed record Vehicle(string Name, string Class, string? Number, bool Turned, double? MassKg, int Axles, double? BrakedAxles, double? VoltageV);

    /// <summary>A line between two vehicles.</summary>
    internal sealed record Line(string Ahead, string Behind, string Name, string State, string? Coupling);

    /// <summary>What is coupled, in its order.</summary>
    internal sealed record Step(string Line, IReadOnlyList<string> Behind, ImmutableArray<string> Who, string? Permission, IReadOnlyList<string> Protections);

    /// <summary>Of a jumper.</summary>
    internal sealed record Current(string Jumper, double CurrentA, double RatedA);

    /// <summary>Of a source.</summary>
    internal sealed record Source(string Name, double OutputW, double PowerW);

    /// <summary>Which machines answer.</summary>
    internal sealed record Command(string Name, IReadOnlyList<string> Answers, IReadOnlyList<string> Silent);

    /// <summary>What it weighs, pulls and holds.</summary>
    internal sealed record Pull(
        double MassKg, double TrailingKg, IReadOnlyList<string> Pulling, double ToStartN, double AdhesionN, double PowerW, double TonnageKg, double BalanceSpeedMps, double GradeN, double BrakesN, IReadOnlyList<string>? HandBrakes);
}
