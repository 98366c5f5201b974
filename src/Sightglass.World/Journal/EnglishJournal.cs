namespace Sightglass.World.Journal;

/// <summary>English, as data.</summary>
public static class EnglishJournal
{
    public static JournalWords Words { get; } = new()
    {
        Bitten = "A hazard bites the {role}: {hazard}. {caution}",
        ToHeed = "A hazard for the {role}: {hazard}. {caution}",
        FaultCame = "Truth: {fault} of {item}.",
        FaultGone = "Truth: {fault} of {item} is gone.",
        Instructor = "instructor",
        Put = "{who} puts {item} to {position}.",
        PutInVain = "{who} puts {item} to {position}, but it does not move.",
        Goes = "{who} goes to {place}.",
        DoesNotMove = "{item} does not move to {position}.",
        IsHeld = "{item} does not move to {position}: it moves only while {condition}.",
        EndedWell = "The card ended well.",
        EndedSafely = "The card ended safely, not done: {why}",
        NotToBeUsed = "The card is not to be used here.",
        Undecided = "Undecided: {why}.",
        Failed = "The card failed: {why}.",
    };
}
