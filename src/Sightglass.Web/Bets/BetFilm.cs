using System.Collections.Immutable;
using Sightglass.Training.Bets;
using Sightglass.Web.Live;

namespace Sightglass.Web.Bets;

/// <summary>A bet that was run, with all that can be seen of the machine at each of its moments.</summary>
/// <param name="Frames">One for each of the result's moments.</param>
public sealed record BetFilm(BoundBet Bet, BetResult Result, ImmutableArray<MachineSnapshot> Frames)
{
    /// <summary>Runs it.</summary>
    public static BetFilm Of(BoundBet bet)
    {
        ArgumentNullException.ThrowIfNull(bet);
        Sampler sampler = new(bet.Plan);
        List<MachineSnapshot> frames = [];
        BetResult result = BetRun.Run(bet, world => frames.Add(sampler.Look(world, sampler.Empty)));
        return new(bet, result, [.. frames]);
    }
}
