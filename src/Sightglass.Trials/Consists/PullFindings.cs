using Sightglass.Basics.Language;

namespace Sightglass.Trials.Consists;

/// <summary>What is to be said of what a train pulls and what holds it.</summary>
internal static class PullFindings
{
    public static IEnumerable<TrainFinding> Of(TrainCheckResult result)
    {
        if (result.Pull is not { } pull)
        {
            CheckedVehicle[] unknown = [.. result.Vehicles.Where(v => v.Mass is null)];
            if (result.Power is not null && unknown.Length > 0)
            {
                yield return new(FindingWeight.Mind, unknown[0].Vehicle.Index, () => Say.With($"The mass of {Say.List(unknown.Select(TrainWords.Name))} is not known, so tonnage, speed and holding are not worked out: write `mass` at it."));
            }

            yield break;
        }

        if (pull.Pulling.IsEmpty)
        {
            yield return new(FindingWeight.Stops, null, () => Say.It("No machine pulls: none answers every command that pulling takes."));
            yield break;
        }

        string grade = TrainWords.Percent(result.Consist.Grade);
        if (!pull.Starts)
        {
            yield return new(FindingWeight.Mend, null, () => Say.With($"It may not start on {grade}: that takes {TrainWords.Force(pull.ToStart)}, and the rail holds {TrainWords.Force(pull.Adhesion)}."));
        }
        else if (pull.BalanceSpeed <= 0)
        {
            yield return new(FindingWeight.Mend, null, () => Say.With($"It comes to a stand on {grade} with all its power."));
        }

        if (!pull.MayHaul)
        {
            yield return new(FindingWeight.Mend, null, () => Say.With($"{TrainWords.Tons(pull.Trailing)} hang on, and by the rule {TrainWords.Tons(pull.Tonnage)} may on {grade}. Divide the train, or add a machine."));
        }

        if (result.Brakes is not null && pull.BrakeForce < pull.GradeForce)
        {
            yield return new(FindingWeight.Stops, null, () => Say.With($"Its brakes set in full do not hold it on {grade}: {TrainWords.Force(pull.BrakeForce)} of {TrainWords.Force(pull.GradeForce)}."));
        }

        if (pull.HandBrakes is null)
        {
            yield return new(FindingWeight.Mend, null, () => Say.With($"All its hand and parking brakes that the book knows do not hold it on {grade} with a fifth to spare: it must not be left there without chocks and people."));
        }
    }
}
