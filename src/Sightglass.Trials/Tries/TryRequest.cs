using Sightglass.Basics.Diagnostics;
using Sightglass.Cards.Tree;
using Sightglass.Trials.Sweep;

namespace Sightglass.Trials.Tries;

/// <summary>One card to be tried in one situation.</summary>
public sealed record TryRequest(TrialSetup Setup, Card Card, SourceText Text, SweepOptions Options, bool LeftOut)
{
    /// <summary>The road number that was asked for; null where each case draws one of the situation's.</summary>
    public string? OnlyNumber { get; init; }

    /// <summary>What is typed to have one of its cases told.</summary>
    public string Command(int number) =>
        $"try \"{Card.Title}\" -s \"{Setup.Situation.Name}\"{(OnlyNumber is null ? "" : $" --road-number {OnlyNumber}")} --seed {Options.Seed} --case {number}";
}
