using System.Collections.Immutable;
using Sightglass.Basics.Language;
using Sightglass.Book.Model;

namespace Sightglass.Trials.Consists;

/// <summary>What of a check is to be said, with its reason.</summary>
internal static class TrainFindings
{
    /// <param name="result">All that was found.</param>
    /// <param name="wrong">Why it could not be run; empty where it could.</param>
    public static ImmutableArray<TrainFinding> Of(TrainCheckResult result, ImmutableArray<string> wrong)
    {
        IEnumerable<TrainFinding> all = wrong.Select(w => new TrainFinding(FindingWeight.Stops, null, () => Say.With($"These vehicles do not go together: {w}.")))
            .Concat(result.Trouble is { } trouble ? [new(FindingWeight.Mend, null, () => Say.With($"It could not be run to the end, so power, brakes and commands are not told: {trouble}."))] : [])
            .Concat(OfJoints(result)).Concat(OfLines(result)).Concat(OfBrakes(result)).Concat(PowerFindings.Of(result)).Concat(OfCommands(result)).Concat(PullFindings.Of(result));
        return [.. all.OrderByDescending(f => f.Weight)];
    }

    private static IEnumerable<TrainFinding> OfJoints(TrainCheckResult result)
    {
        foreach (TrainJoint joint in result.Joints)
        {
            (CheckedVehicle ahead, CheckedVehicle behind) = (result.Vehicles[joint.Ahead], result.Vehicles[joint.Ahead + 1]);
            foreach (JointLine line in joint.Lines)
            {
                if (line.State == LineState.Unlike)
                {
                    yield return new(FindingWeight.Stops, joint.Ahead, () => Say.With($"{Say.Begin(Say.Book(line.Line))}: cannot be coupled {TrainWords.Between(result, joint.Ahead)}. What the two ends have for it does not go together: {line.Ahead!.Name}, {line.Behind!.Name}."));
                }
                else if (line.State == LineState.WrongEnd)
                {
                    CheckedVehicle turn = line.Ahead is null ? ahead : behind;
                    yield return new(FindingWeight.Mend, turn.Vehicle.Index, () => Say.With($"{Say.Begin(Say.Book(line.Line))}: {TrainWords.Name(turn)} has it at its other end alone. Turned, it could be coupled {TrainWords.Between(result, joint.Ahead)}."));
                }
            }
        }
    }

    /// <summary>Vehicles that a line does not reach from the leading machine.</summary>
    private static IEnumerable<TrainFinding> OfLines(TrainCheckResult result)
    {
        foreach (LineUse use in result.Book.MakingUp?.Lines ?? [])
        {
            int[] lacking = [.. Enumerable.Range(0, result.Vehicles.Length).Where(i => IsWanted(result.Vehicles[i], use) && !Reaches(result, use.Line, i))];
            if (lacking.Length > 0)
            {
                yield return new(
                    use.IsNeeded ? FindingWeight.Stops : FindingWeight.Mend,
                    lacking[0],
                    () => Say.With($"{Say.Begin(Say.Book(use.Line))}: does not reach {Say.List(lacking.Select(i => TrainWords.Name(result.Vehicles[i])))}. {use.Lost}").TrimEnd());
            }
        }
    }

    private static bool IsWanted(CheckedVehicle vehicle, LineUse use) =>
        (vehicle.IsMachine || !use.BetweenMachines) && (use.IsNeeded || vehicle.Class.Ends.Values.Any(e => e.Joins.ContainsKey(use.Line)));

    private static bool Reaches(TrainCheckResult result, string line, int to)
    {
        (int first, int last) = to < result.Lead ? (to, result.Lead) : (result.Lead, to);
        return result.Joints.Skip(first).Take(last - first).All(j => j.Lines.Any(l => l.Line == line && l.State == LineState.Coupled));
    }

    private static IEnumerable<TrainFinding> OfBrakes(TrainCheckResult result)
    {
        if (result.Brakes is not { } brakes)
        {
            if (result.Book.MakingUp?.Brakes is null)
            {
                yield return new(FindingWeight.Mind, null, () => Say.It("The book does not say what sets the brakes of a train in full, so how many of them work is not told."));
            }

            yield break;
        }

        if (brakes.Share < 1)
        {
            yield return new(FindingWeight.Stops, null, () => Say.With($"{TrainWords.Percent(brakes.Share)} of the brakes work. After its brake test a train leaves with all of them (49 CFR 238.313(f), 232.103(d)); 238.15 says how, how fast and how far it may be moved with fewer. Those who may decide it."));
        }

        foreach (VehicleBrakes vehicle in brakes.Vehicles)
        {
            CylinderReading[] stay = [.. vehicle.Cylinders.Where(c => !c.Set)], drag = [.. vehicle.Cylinders.Where(c => c.Set && !c.Released)];
            int at = vehicle.Vehicle.Vehicle.Index;
            if (stay.Length > 0)
            {
                yield return new(FindingWeight.Mend, at, () => Say.With($"{Say.Begin(TrainWords.Name(vehicle.Vehicle))}: its brakes are not all set with those of the train: {Say.List(stay.Select(c => c.Cylinder.Label))}."));
            }

            if (drag.Length > 0)
            {
                yield return new(FindingWeight.Mend, at, () => Say.With($"{Say.Begin(TrainWords.Name(vehicle.Vehicle))}: its brakes do not all let go: {Say.List(drag.Select(c => c.Cylinder.Label))}."));
            }

            bool isEnd = at == 0 || at == result.Vehicles.Length - 1;
            if (isEnd && vehicle.WorkingAxles == 0)
            {
                yield return new(FindingWeight.Stops, at, () => Say.With($"{Say.Begin(TrainWords.Name(vehicle.Vehicle))}: no brake of it works, and it stands at an end of the train: 49 CFR 238.15(e)."));
            }
        }
    }

    private static IEnumerable<TrainFinding> OfCommands(TrainCheckResult result)
    {
        foreach ((CheckedVehicle unit, int at) in result.Vehicles.Select((v, i) => (v, i)).Where(v => v.v.IsLive))
        {
            string[] deaf = [.. result.Commands.Where(c => !c.AnsweredBy(at)).Select(c => c.Command.Name)];
            if (deaf.Length > 0)
            {
                yield return new(FindingWeight.Mend, at, () => Say.With($"{Say.Begin(TrainWords.Name(unit))}: does not answer the leading cab in {Say.List(deaf)}."));
            }
        }
    }
}
