using System.Collections.Immutable;
using Sightglass.World.Journal;

namespace Sightglass.Training.Bets;

/// <summary>What happened, each thing once: what repeats itself is counted.</summary>
public static class BetStory
{
    /// <returns>In the order of the first time: the line, and how often it came in all.</returns>
    public static ImmutableArray<(JournalEntry First, int Times)> Of(IEnumerable<JournalEntry> journal) =>
        [.. journal.Where(j => j.Text.Length > 0).GroupBy(j => (j.Kind, j.Text)).Select(g => (g.First(), g.Count()))];
}
