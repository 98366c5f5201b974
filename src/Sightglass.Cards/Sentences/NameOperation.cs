namespace Sightglass.Cards.Sentences;

/// <summary>A way of saying a name that is not simply the name.</summary>
public enum NameOperation
{
    /// <summary><c>{name} of {letter}</c>.</summary>
    Of,

    /// <summary><c>{letter}'s {name}</c>.</summary>
    Own,

    /// <summary><c>its {name}</c>, in Let only.</summary>
    Its,

    /// <summary><c>each other {noun}</c>: all that the letter may stand for but the one it stands for.</summary>
    EachOther,

    /// <summary><c>each {noun}</c>.</summary>
    Each,

    /// <summary><c>any other {noun}</c>: at least one of the others.</summary>
    AnyOther,

    /// <summary><c>any {noun}</c>.</summary>
    Any,

    /// <summary><c>the other {noun}</c> of two.</summary>
    Other,

    /// <summary><c>{name} on the {side} side</c>: the name with a comma and the side.</summary>
    OnSide,

    /// <summary><c>{name} on {letter}'s side</c>.</summary>
    OnOwnSide,

    /// <summary><c>protection for {name}</c>.</summary>
    ProtectionFor,

    /// <summary><c>protection</c> alone: the one that is held.</summary>
    ProtectionHeld,
}
