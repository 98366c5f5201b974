using Sightglass.Training.WalkDowns;

namespace Sightglass.Training.Proposals;

/// <summary>What a finding of a walk-down proposes. What was not seen, and a note on what is as described, is only told: people look at it first.</summary>
public static class WalkDownDrafts
{
    /// <param name="entry">Of an item.</param>
    /// <param name="photoName">Where the photo would lie in the book's folder; null where there is none.</param>
    public static IEnumerable<ProposalDraft> Of(WalkDownEntry entry, string? photoName)
    {
        ArgumentNullException.ThrowIfNull(entry);
        string? number = entry.State == FoundState.Differs ? entry.RoadNumber : null;
        string who = $"{entry.By} at {entry.Place}{(entry.RoadNumber is { } n ? $" of {n}" : "")}";
        if (entry.Label is { Length: > 0 } label)
        {
            yield return new("label", number, $"{who}: this is what its label says.", now => now == label || (now.Length == 0 && label == entry.Item) ? null : label);
        }

        if (entry.OpensTowards is { Length: > 0 } opens)
        {
            yield return new("operate", number, $"{who}: this is the way it is open.", now => With(now, $"Open: {opens.TrimEnd('.')}."));
        }

        if (entry.State == FoundState.Differs && entry.Note is { Length: > 0 } note)
        {
            yield return new("know", number, $"{who}: it differs from the book.", now => With(now, number is null ? note : $"On this road number: {note}"));
        }

        if (photoName is not null)
        {
            yield return new("photo", number, $"{who}: this is what it looks like.", now => now == photoName ? null : photoName);
        }
    }

    private static string? With(string now, string sentence) =>
        now.Contains(sentence, StringComparison.Ordinal) ? null : now.Length == 0 ? sentence : $"{now} {sentence}";
}
