namespace Sightglass.Cards.Sentences;

/// <summary>What lint and the compiler should know about a sentence.</summary>
[Flags]
public enum FormHints
{
    None = 0,

    /// <summary>It does something: it may not stand in a notice.</summary>
    Action = 1,

    /// <summary>It operates a control, so that an indication should be expected.</summary>
    Control = 2,

    /// <summary>It looks at an indication.</summary>
    Looks = 4,

    /// <summary>It lasts until something happens, so that a time limit belongs to it.</summary>
    Limited = 8,

    /// <summary>The step goes elsewhere afterwards.</summary>
    Leaves = 16,

    /// <summary>It is printed without a full stop.</summary>
    NoStop = 32,

    /// <summary>Another way that stays as it is written: its words agree with the noun before them.</summary>
    Kept = 64,
}
