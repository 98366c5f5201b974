using Sightglass.Basics.Language;
using Sightglass.Trials.Consists;

namespace Sightglass.Paper.Papers;

/// <summary>The numbers of a train that was checked, each with what it is measured against, and where all of them come from.</summary>
public static class TrainNumbers
{
    public static IEnumerable<(string Name, string Value, string Says)> Of(TrainCheckResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        yield return (Say.It("Length"), TrainWords.Length(result.Vehicles.Sum(v => v.Class.Length)), Say.Of(result.Vehicles.Length, $"in {result.Vehicles.Length} vehicle", $"in {result.Vehicles.Length} vehicles"));
        if (result.Brakes is { } brakes)
        {
            yield return (Say.It("Brakes that work"), TrainWords.Percent(brakes.Share), Say.With($"on {brakes.WorkingAxles:0.#} of {brakes.Axles} axles"));
        }

        foreach ((string, string, string) row in Power(result).Concat(Pull(result)))
        {
            yield return row;
        }
    }

    /// <summary>Which rules and formulas they come from.</summary>
    public static string Sources(TrainCheckResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        string brakes = result.Brakes is null ? "" : Say.It("Brakes: axles seen released and set, 49 CFR 238.15(d)(1); each axle cut out of a locomotive over 200,000 lb counts as two.");
        if (result.Pull is null)
        {
            return brakes;
        }

        string pull = Say.With($"Start, tonnage and speed: {Way(result)}; 20 lb for each short ton to start (common practice); tonnage by a US Army manual of rail transport; Davis 1926. By hand: a fifth more than the grade pulls; how many are set is the rule of your railroad.");
        return $"{brakes} {pull}".Trim();
    }

    private static string Way(TrainCheckResult result) => result.Consist switch
    {
        { Curve: > 0 } => Say.With($"{TrainWords.Percent(result.Consist.Grade)} up, curve of {result.Consist.Curve:0.#} degrees"),
        { Grade: > 0 } => Say.With($"{TrainWords.Percent(result.Consist.Grade)} up"),
        _ => Say.It("on the level"),
    };

    private static IEnumerable<(string Name, string Value, string Says)> Power(TrainCheckResult result)
    {
        if (result.Power is not { } power)
        {
            yield break;
        }

        foreach (SourceReading source in power.Sources.Where(s => s.Feeds))
        {
            yield return (Say.It("Head-end power"), TrainWords.Power(source.Watts), Say.With($"of {TrainWords.Power(source.Power)}, from {TrainWords.Name(result.Vehicles[source.Source.Vehicle.Index])}"));
        }

        if (power.Loads.Where(l => l.Volts > 1).MinBy(l => l.Volts / l.Rated) is { } least)
        {
            yield return (Say.It("Least voltage"), TrainWords.Volts(least.Volts), Say.With($"of {TrainWords.Volts(least.Rated)}, in {TrainWords.Name(result.Vehicles[least.Load.Vehicle.Index])}"));
        }

        if (power.Jumpers.Where(j => j.Amperes >= 1).MaxBy(j => j.Amperes / j.Rated) is { } most)
        {
            yield return (Say.It("Most current"), TrainWords.Amperes(most.Amperes), Say.With($"of {TrainWords.Amperes(most.Rated)}, {most.Item.Name}"));
        }
    }

    private static IEnumerable<(string Name, string Value, string Says)> Pull(TrainCheckResult result)
    {
        if (result.Pull is not { } pull)
        {
            yield break;
        }

        yield return (Say.It("Mass"), TrainWords.Tons(pull.Mass), Say.With($"of which {TrainWords.Tons(pull.Trailing)} hang on"));
        yield return (Say.It("May hang on"), TrainWords.Tons(pull.Tonnage), Say.It("by the rule"));
        yield return (Say.It("To start"), TrainWords.Force(pull.ToStart), "");
        yield return (Say.It("Pull at the rail"), TrainWords.Force(pull.Adhesion), Say.With($"at an adhesion of {TrainWords.Percent(result.Consist.Adhesion)}"));
        yield return (Say.It("Balance speed"), pull.BalanceSpeed > 0 ? TrainWords.Speed(pull.BalanceSpeed) : Say.It("none"), Say.With($"with {TrainWords.Power(pull.Power)} at the rail, head-end power taken off"));
        if (result.Consist.Grade > 0)
        {
            yield return (Say.It("Held by air"), TrainWords.Force(pull.BrakeForce), Say.With($"set in full; the grade pulls {TrainWords.Force(pull.GradeForce)}"));
            yield return (Say.It("Held by hand"), pull.HandBrakes is { } set ? Say.Of(set.Length, $"{set.Length} brake", $"{set.Length} brakes") : Say.It("not held"), pull.HandBrakes is { } on ? Say.With($"from the head: {Say.List(on.Select(i => TrainWords.Name(result.Vehicles[i])))}") : "");
        }
    }
}
