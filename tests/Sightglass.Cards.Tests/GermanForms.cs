using System.Collections.Immutable;
using Sightglass.Cards.Sentences;

namespace Sightglass.Cards.Tests;

/// <summary>A second language: nothing but another table. The book's names stay as they are.</summary>
internal static class GermanForms
{
    public static CardLanguage Language { get; } = new("de", "Deutsch", [.. Forms()], [.. Names()], Small(), new LintWords() { MostInStep = 20, MostInNotice = 25 });

    private static IEnumerable<SentenceForm> Forms() =>
    [
        new(Operation.Card, FormPlace.Head, "Karte: {title:text}", hints: FormHints.NoStop),
        new(Operation.For, FormPlace.Head, "Für: {roles}[; Bescheid: {told:roles}]", hints: FormHints.NoStop),
        new(Operation.LetWhere, FormPlace.Head, "Sei {letter:name} das {noun:words}, bei dem {condition}, von {domain:texts}"),
        new(Operation.LetOneOf, FormPlace.Head, "Sei {letter:name} das {noun:words}, eines von {domain:texts}"),
        new(Operation.DoneWhen, FormPlace.Head, "Fertig, wenn: {facts}"),
        new(Operation.Caution, FormPlace.Notice, "Vorsicht: {text}"),
        new(Operation.Jump, FormPlace.Step, "Weiter bei Schritt {step}", "ging weiter bei Schritt {step}"),
        new(Operation.Go, FormPlace.Step, "Gehe zu {place}", "gingst zu {place}"),
        new(Operation.Open, FormPlace.Step, "Öffne {item}", "öffnetest {item}", position: "open"),
        new(Operation.Close, FormPlace.Step, "Schließe {item}", "schlossest {item}", position: "closed"),
        new(Operation.Turn, FormPlace.Step, "Stelle {item} auf {position}", "stelltest {item} auf {position}", hints: FormHints.Action | FormHints.Control),
        new(Operation.AskRequest, FormPlace.Step, "Bitte {role}: {request:action}", "batest {role}: {request}, und es wurde getan", "batest {role}: {request}, und {answer}"),
        new(Operation.Check, FormPlace.Step, "Prüfe, ob {condition}", "prüftest, und es war so: {condition}", "prüftest, und es war nicht so: {condition}"),
        new(Operation.WaitUntil, FormPlace.Step, "Warte, bis {condition}, höchstens {limit:time}", "wartetest, bis {condition}"),
        new(Operation.Tell, FormPlace.Step, "Sage {roles}: {text}", "sagtest {roles}: {text}"),
        new(Operation.ForEach, FormPlace.Step, "Vom {first:words} bis zum {last:words}, jeder {noun}:[ {actions}]"),
        new(Operation.NextRound, FormPlace.Step, "Weiter mit dem nächsten {noun:words}", "gingst weiter mit dem nächsten {noun}"),
        new(Operation.SameTime, FormPlace.Step, "Zur gleichen Zeit:[ {actions}]"),
        new(Operation.Connect, FormPlace.Step, "Verbinde {item} mit {other:item}", "verbandest {item} mit {other}", position: "connected"),
        new(Operation.Disconnect, FormPlace.Step, "Trenne {item}", "trenntest {item}", position: "disconnected"),
        new(Operation.LockAndTag, FormPlace.Step, "Sperre {item} und hänge ein Schild an", "sperrtest {item}"),
        new(Operation.Unlock, FormPlace.Step, "Nimm die Sperre von {item}", "nahmst die Sperre von {item}"),
        new(Operation.Chock, FormPlace.Step, "Lege den Keil an {item}", "legtest den Keil an {item}"),
        new(Operation.Unchock, FormPlace.Step, "Nimm den Keil von {item}", "nahmst den Keil von {item}"),
        new(Operation.SetProtection, FormPlace.Step, "Stelle {protection} bei {place} auf", "stelltest {protection} bei {place} auf"),
        new(Operation.RemoveProtection, FormPlace.Step, "Nimm {protection} bei {place} weg", "nahmst {protection} bei {place} weg"),
        new(Operation.DoCard, FormPlace.Step, "Mache Karte \"{title:words}\"", "nahmst Karte \"{title}\""),
        new(Operation.DoCard, FormPlace.Step, "Mache Karte \"{title:words}\" mit {letter:name} = {word:words}", "nahmst Karte \"{title}\" mit {letter} = {word}"),
        new(Operation.IfNot, FormPlace.Tail, "Sonst {action}"),
        new(Operation.Answer, FormPlace.Tail, "Warte auf die Antwort, höchstens {limit:time}"),
        new(Operation.ShowsWord, FormPlace.Condition, "{item} {word:scale word} zeigt"),
        new(Operation.IsLit, FormPlace.Condition, "{item} leuchtet", position: "lit"),
        new(Operation.IsDark, FormPlace.Condition, "{item} dunkel ist", position: "dark"),
        new(Operation.Sign, FormPlace.Condition, "{sign}"),
        new(Operation.Fact, FormPlace.Fact, "{fact}"),
    ];

    private static IEnumerable<NameForm> Names() =>
    [
        new(NameOperation.Of, "{name} von {letter}"),
        new(NameOperation.Own, "{letter}s {name}"),
        new(NameOperation.EachOther, "jedem anderen {noun}"),
        new(NameOperation.OnSide, "{name} auf der Seite {side}"),
    ];

    private static SmallWords Small() => new()
    {
        Articles = ["der", "die", "das", "dem", "den"],
        Article = "",
        And = "und",
        Or = "oder",
        Then = ["und dann", "und"],
        If = ["wenn", "falls"],
        SignVerbs = [],
        StoppedText = "{title}: angehalten bei Schritt {step}",
        You = "Du",
        Nobody = "niemand",
        Sides = ["right", "left"],
        First = ["ersten"],
        Last = ["letzten"],
        NotSo = "es ist nicht so, dass {0}",
        Showed = "Anzeige {0}",
        Replies = new Dictionary<Reply, string> { [Reply.Stuck] = "die Antwort war nein: es bewegt sich nicht" }.ToImmutableDictionary(),
    };
}
