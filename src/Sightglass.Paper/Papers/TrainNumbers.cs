using Sightglass.Basics.Language;
using Sightglass.Trials.Consists;

namespace Sightglass.Paper.Papers;

/// <summary>The numbers of a train that was checked, each with what it comes from.</summary>
public static class TrainNumbers
{
    public static IEnumerable<(string Name, string Value, string Says)> Of(TrainCheckResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        yield return (Say.It("Length"), TrainWords.Length(result.Vehicles.Sum(v => v.Class.Length)), Say.Of(result.Vehicles.Length, $"{result.Vehicles.Length} vehicle over the couplers", $"{result.Vehicles.Length} vehicles over the couplers"));
        if (result.Brakes is { } brakes)
        {
            yield return (Say.It("Brakes that work"), TrainWords.Percent(brakes.Share), Say.With($"{brakes.WorkingAxles:0.#} of {brakes.Axles} axles, seen released and set; 49 CFR 238.15(d)(1), each axle cut out of a heavy locomotive counts as two"));
        }

        foreach ((string, string, string) row in Power(result).Concat(Pull(result)))
        {
            yield return row;
        }
    }

    private static IEnumerable<(string Name, string Value, string Says)> Power(TrainCheckResult result)
    {
        if (result.Power is not { } power)
        {
            yield break;
        }

        foreach (SourceReading source in power.Sources.Where(s => s.Feeds))
        {
            yield return (Say.It("Head-end power"), TrainWords.Power(source.Watts), Say.With($"{source.Source.Name}; it may give {TrainWords.Power(source.Power)} for ever"));
        }

        if (power.Loads.Where(l => l.Volts > 0).MinBy(l => l.Volts) is { } least)
        {
            yield return (Say.It("Least voltage"), TrainWords.Volts(least.Volts), Say.With($"in {TrainWords.Name(result.Vehicles[least.Load.Vehicle.Index])}, made for {TrainWords.Volts(least.Rated)}"));
        }

        if (power.Jumpers.Where(j => j.Amperes >= 1).MaxBy(j => j.Amperes / j.Rated) is { } most)
        {
            yield return (Say.It("Most current"), TrainWords.Amperes(most.Amperes), Say.With($"{most.Item.Name}; it stands {TrainWords.Amperes(most.Rated)} for ever"));
        }
    }

    private static IEnumerable<(string Name, string Value, string Says)> Pull(TrainCheckResult result)
    {
        if (result.Pull is not { } pull)
        {
            yield break;
        }

        string way = result.Consist.Curve > 0
            ? Say.With($"{TrainWords.Percent(result.Consist.Grade)} up, curve of {result.Consist.Curve:0.#} degrees")
            : result.Consist.Grade > 0 ? Say.With($"{TrainWords.Percent(result.Consist.Grade)} up") : Say.It("on the level");
        string adhesion = TrainWords.Percent(result.Consist.Adhesion);
        yield return (Say.It("Mass"), TrainWords.Tons(pull.Mass), Say.With($"{TrainWords.Tons(pull.Trailing)} of it hang on {Say.List(pull.Pulling.Select(p => TrainWords.Name(result.Vehicles[p])))}"));
        yield return (Say.It("To start"), TrainWords.Force(pull.ToStart), Say.With($"{way}, 20 lb for each short ton that stands (common practice)"));
        yield return (Say.It("Pull at the rail"), TrainWords.Force(pull.Adhesion), Say.With($"adhesion {adhesion} on driven axles of machines that answer"));
        yield return (Say.It("May hang on"), TrainWords.Tons(pull.Tonnage), Say.With($"{way}, rule of a US Army manual of rail transport"));
        yield return (Say.It("Balance speed"), pull.BalanceSpeed > 0 ? TrainWords.Speed(pull.BalanceSpeed) : Say.It("none"), Say.With($"{way}, {TrainWords.Power(pull.Power)} at the rail, head-end power taken off; Davis 1926"));
        if (result.Consist.Grade > 0)
        {
            yield return (Say.It("Held by air"), TrainWords.Force(pull.BrakeForce), Say.With($"brakes set in full, as long as the air lasts; the grade pulls {TrainWords.Force(pull.GradeForce)}"));
            yield return (Say.It("Held by hand"), pull.HandBrakes is { } set ? Say.Of(set.Length, $"{set.Length} brake", $"{set.Length} brakes") : Say.It("not held"), pull.HandBrakes is { } on ? Say.With($"a fifth more than the grade pulls, from the head: {Say.List(on.Select(i => TrainWords.Name(result.Vehicles[i])))}. How many are set is the rule of your railroad") : Say.It("hand and parking brakes of all vehicles"));
        }
    }
}
