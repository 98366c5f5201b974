namespace Sightglass.World.Journal;

/// <summary>Sorts of journal entry.</summary>
public enum JournalKind
{
    /// <summary>A person did or saw something.</summary>
    Deed,

    /// <summary>A person found something by looking, and where the card went on.</summary>
    Finding,

    /// <summary>Somebody said something.</summary>
    Said,

    /// <summary>The plant changed by itself in a way that is noticed.</summary>
    Plant,

    /// <summary>Somebody met a danger: injured by it, or told to heed it.</summary>
    Hazard,

    /// <summary>Hidden truth: for the instructor and the evaluation alone.</summary>
    Truth,

    /// <summary>The card ended.</summary>
    End,
}
