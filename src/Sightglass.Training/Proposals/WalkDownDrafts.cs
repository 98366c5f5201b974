using Sightglass.Training.WalkDowns;

namespace Sightglass.Training.Proposals;

/// <summary>What a finding of a walk-down proposes. What was not seen, and a note on what is as described, is only told: people look at it first.</summary>
public static class WalkDownDrafts
{
    /// <summary>Property of a photo that goes among the book's pictures: it has marks, or is of a place and no item of it.</summary>
    public const string Picture = "picture";

    /// <param name="entry">Of an item, or of a place: then only its photo is proposed.</param>
    /// <param name="photoName">Where the photo would lie in the book's folder; null where there is none.</param>
    public static IEnumerable<ProposalDraft> Of(WalkDownEntry entry, string? photoName)
    {
        ArgumentNullException.ThrowIfNull(entry);
        string? number = entry.State == FoundState.Differs ? entry.RoadNumber : null;
        string who = $"{entry.By} at {entry.Place}{(entry.RoadNumber is { } n ? $" of {n}" : "")}";
        IEnumerable<ProposalDraft> ofItem = entry.Item is null ? [] : OfItem(entry, number, who);
        string photo = entry.Item is null || entry.Marks is not null ? Picture : "photo";
        return photoName is null ? ofItem : ofItem.Append(new(photo, number, $"{who}: this is what it looks like.", now => now == photoName ? null : photoName));
    }

    private static IEnumerable<ProposalDraft> OfItem(WalkDownEntry entry, string? number, string who)
    {
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
    }

    private static string? With(string now, string sentence) =>
        now.Contains(sentence, StringComparison.Ordinal) ? null : now.Length == 0 ? sentence : $"{now} {sentence}";
}
