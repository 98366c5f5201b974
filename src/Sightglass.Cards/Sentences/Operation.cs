namespace Sightglass.Cards.Sentences;

/// <summary>What a sentence means, whatever language it is written in. Every row of a language's table names one.</summary>
public enum Operation
{
    /// <summary>A sentence that was not understood; kept as written.</summary>
    Unread,

    // Head.
    Card,
    For,
    Told,
    Needs,
    LetWhere,
    LetWhose,
    LetOneOf,
    UseWhen,
    MustNever,
    DoneWhen,
    StaysSo,

    // Notices, before their step.
    Danger,
    Warning,
    Caution,
    Notice,

    // Steps.
    Jump,
    JumpToEnd,
    Go,
    Open,
    Close,
    Turn,
    Push,
    Start,
    StopMachine,
    Hold,
    HoldUntil,
    Check,
    Look,
    LookWhether,
    Read,
    Wait,
    WaitUntil,
    Tell,
    AskPermission,
    AskRequest,
    AskProtection,
    GiveBack,
    LockAndTag,
    If,
    When,
    AnyOrder,
    SameTime,
    OneOf,
    Repeat,
    DoCard,
    Stop,
    Connect,
    Disconnect,
    Chock,
    SetSignals,

    // After another sentence of the same step.
    IfNot,
    Answer,

    // Conditions.
    ShowsAtLeast,
    ShowsAtMost,
    ShowsMoreThan,
    ShowsLessThan,
    ShowsExactly,
    ShowsWord,
    ShowsNotWord,
    IsAtLeast,
    IsAtMost,
    IsMoreThan,
    IsLessThan,
    PositionIs,
    PositionIsNot,
    Sign,
    NoSign,
    Fact,
    NotFact,
}
