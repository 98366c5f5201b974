using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Time;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;
using Sightglass.World.Records;

namespace Sightglass.Training.Bets;

/// <summary>Runs a bet from its start to its end. Looking changes nothing: the same acts live come out the same.</summary>
public static class BetRun
{
    private const int Moments = 240;

    /// <param name="bet">What is run.</param>
    /// <param name="look">Called at every moment that is kept, with the state in view; null where nobody looks.</param>
    /// <exception cref="InvalidOperationException">The situation does not fit the plan, which binding would have told.</exception>
    public static BetResult Run(BoundBet bet, Action<World.World>? look = null)
    {
        ArgumentNullException.ThrowIfNull(bet);
        using LaneBank bank = new(bet.Plan);
        World.World world = new(bank, 0) { Journal = [] };
        DiagnosticList found = [];
        if (!Replay.Begin(world, bet.Start, found))
        {
            throw new InvalidOperationException(string.Join('\n', found));
        }

        foreach ((SimTime at, World.WorldAction act) in bet.Acts)
        {
            world.Do(act, at);
        }

        List<BetMoment> moments = [];
        bool[] held = new bool[bet.Answers.Length];
        double?[] first = new double?[bet.Answers.Length];
        world.OnSample = Look;
        for (int i = 0; i <= Moments && world.Trouble is null; i++)
        {
            SimTime at = i == Moments ? bet.End : SimTime.FromSeconds(bet.Bet.RunsFor * i / Moments);
            world.SampleAt(at);
            world.RunTo(at);
        }

        world.CutHere();
        int cameTrue = world.Trouble is null ? Array.IndexOf(held, true) : -1;
        return new(cameTrue, [.. held], [.. first], [.. moments], [.. world.Journal!], world.Trouble, world.Hash, world.Steps);

        void Look(World.World seen)
        {
            look?.Invoke(seen);
            moments.Add(new(seen.Now.Seconds, [.. bet.Shows.Select(s => s.Unit.FromSi(seen.Value(s.Signal)))]));
            for (int i = 0; i < held.Length; i++)
            {
                held[i] = bet.Answers[i] is { } margin ? seen.Value(margin) >= 0 : !held.Take(i).Any(h => h);
                first[i] ??= held[i] ? seen.Now.Seconds : null;
            }
        }
    }
}
