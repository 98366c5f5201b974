using System.Collections.Immutable;

namespace Sightglass.Cards.Sentences;

/// <summary>English, as data.</summary>
public static partial class EnglishForms
{
    /// <summary>The language of cards unless another is asked for.</summary>
    public static CardLanguage Language { get; } = new("en", "English", [.. Head(), .. Notices(), .. Steps(), .. Tails(), .. Conditions()], [.. Names()], Small(), Lint());

    private static IEnumerable<SentenceForm> Head() =>
    [
        new(Operation.Card, FormPlace.Head, "Card: {title:text}", hints: FormHints.NoStop),
        new(Operation.For, FormPlace.Head, "For: {roles}[; told: {told:roles}]", hints: FormHints.NoStop),
        new(Operation.Told, FormPlace.Head, "Told: {told:roles}", hints: FormHints.NoStop),
        new(Operation.Needs, FormPlace.Head, "Needs: {needs:texts}", hints: FormHints.NoStop),
        new(Operation.LetWhere, FormPlace.Head, "Let {letter:name} be the {noun:words} where {condition}, out of {domain:texts}"),
        new(Operation.LetWhere, FormPlace.Head, "Let {letter:name} be the {noun:words}, out of {domain:texts}, where {condition}"),
        new(Operation.LetWhose, FormPlace.Head, "Let {letter:name} be the {noun:words} whose {condition}, out of {domain:texts}"),
        new(Operation.LetWhose, FormPlace.Head, "Let {letter:name} be the {noun:words}, out of {domain:texts}, whose {condition}"),
        new(Operation.LetOneOf, FormPlace.Head, "Let {letter:name} be the {noun:words}, one of {domain:texts}"),
        new(Operation.UseWhen, FormPlace.Head, "Use when: {condition}"),
        new(Operation.MustNever, FormPlace.Head, "Must never: {facts}"),
        new(Operation.DoneWhen, FormPlace.Head, "Done when: {facts}"),
        new(Operation.StaysSo, FormPlace.Head, "Stays so for {time}"),
    ];

    private static IEnumerable<SentenceForm> Notices() =>
    [
        new(Operation.Danger, FormPlace.Notice, "Danger: {text}"),
        new(Operation.Warning, FormPlace.Notice, "Warning: {text}"),
        new(Operation.Caution, FormPlace.Notice, "Caution: {text}"),
        new(Operation.Notice, FormPlace.Notice, "Notice: {text}"),
    ];

    private static IEnumerable<SentenceForm> Tails() =>
    [
        new(Operation.IfNot, FormPlace.Tail, "If not, {action}"),
        new(Operation.Answer, FormPlace.Tail, "Wait for the answer, at most {limit:time}"),
        new(Operation.StaysSo, FormPlace.Tail, "Stays so for {time}"),
    ];

    private static IEnumerable<NameForm> Names() =>
    [
        new(NameOperation.Of, "{name} of {letter}"),
        new(NameOperation.Own, "{letter}'s {name}"),
        new(NameOperation.Its, "its {name}"),
        new(NameOperation.EachOther, "each other {noun}"),
        new(NameOperation.EachOther, "every other {noun}"),
        new(NameOperation.Each, "each {noun}"),
        new(NameOperation.Each, "every {noun}"),
        new(NameOperation.AnyOther, "any other {noun}"),
        new(NameOperation.Any, "any {noun}"),
        new(NameOperation.Other, "other {noun}"),
        new(NameOperation.OnSide, "{name} on the {side} side"),
        new(NameOperation.OnOwnSide, "{name} on {letter}'s side"),
        new(NameOperation.ProtectionFor, "protection for {name}"),
        new(NameOperation.ProtectionHeld, "protection"),
    ];

    private static SmallWords Small() => new()
    {
        Articles = ["the", "a", "an"],
        Article = "the",
        And = "and",
        Or = "or",
        Then = ["and then", "then", "and"],
        If = ["if", "when"],
        SignVerbs = ["is seen", "are seen", "is heard", "are heard", "is smelled", "are smelled", "is felt"],
        StoppedText = "{title}: stopped at step {step}",
        You = "You",
        Nobody = "nobody",
        Sides = ["right", "left"],
        First = ["first"],
        Last = ["last"],
        NotSo = "it is not so that {0}",
        Showed = "it showed {0}",
        Replies = new Dictionary<Reply, string>
        {
            [Reply.None] = "no answer came in time",
            [Reply.MayNot] = "the answer was no: I may not operate it",
            [Reply.NotPermitted] = "the answer was no: I have no permission to operate it",
            [Reply.Locked] = "the answer was no: it is locked and tagged",
            [Reply.Unsafe] = "the answer was no: it is not safe to do",
            [Reply.NoWay] = "the answer was no: I cannot get there",
            [Reply.Stuck] = "the answer was no: it does not move",
        }.ToImmutableDictionary(),
    };
}
