using System.Collections.Immutable;

namespace Sightglass.Cards.Sentences;

/// <summary>Spanish of the Americas, as data. Words that are written as one stand apart here (<c>a el</c>): they are put together when a sentence is printed.</summary>
public static partial class SpanishForms
{
    public static CardLanguage Language { get; } = new("es", "Español", [.. Head(), .. Notices(), .. Steps(), .. Tails(), .. Conditions()], [.. Names()], Small(), Lint());

    private static IEnumerable<SentenceForm> Head() =>
    [
        new(Operation.Card, FormPlace.Head, "Ficha: {title:text}", hints: FormHints.NoStop),
        new(Operation.For, FormPlace.Head, "Para: {roles}[; se avisa a: {told:roles}]", hints: FormHints.NoStop),
        new(Operation.Told, FormPlace.Head, "Se avisa a: {told:roles}", hints: FormHints.NoStop),
        new(Operation.Needs, FormPlace.Head, "Hace falta: {needs:texts}", hints: FormHints.NoStop),
        new(Operation.LetWhere, FormPlace.Head, "Sea {letter:name} el {noun:words} donde {condition}, de entre {domain:texts}"),
        new(Operation.LetWhere, FormPlace.Head, "Sea {letter:name} la {noun:words} donde {condition}, de entre {domain:texts}"),
        new(Operation.LetWhere, FormPlace.Head, "Sea {letter:name} el {noun:words}, de entre {domain:texts}, donde {condition}"),
        new(Operation.LetWhere, FormPlace.Head, "Sea {letter:name} la {noun:words}, de entre {domain:texts}, donde {condition}"),
        new(Operation.LetWhose, FormPlace.Head, "Sea {letter:name} el {noun:words} de modo que {condition}, de entre {domain:texts}"),
        new(Operation.LetWhose, FormPlace.Head, "Sea {letter:name} la {noun:words} de modo que {condition}, de entre {domain:texts}"),
        new(Operation.LetWhose, FormPlace.Head, "Sea {letter:name} el {noun:words}, de entre {domain:texts}, de modo que {condition}"),
        new(Operation.LetWhose, FormPlace.Head, "Sea {letter:name} la {noun:words}, de entre {domain:texts}, de modo que {condition}"),
        new(Operation.LetOneOf, FormPlace.Head, "Sea {letter:name} el {noun:words}, uno de {domain:texts}"),
        new(Operation.LetOneOf, FormPlace.Head, "Sea {letter:name} la {noun:words}, una de {domain:texts}"),
        new(Operation.UseWhen, FormPlace.Head, "Se usa cuando: {condition}"),
        new(Operation.MustNever, FormPlace.Head, "No debe pasar nunca: {facts}"),
        new(Operation.DoneWhen, FormPlace.Head, "Terminada cuando: {facts}"),
        new(Operation.StaysSo, FormPlace.Head, "Sigue así durante {time}"),
    ];

    private static IEnumerable<SentenceForm> Notices() =>
    [
        new(Operation.Danger, FormPlace.Notice, "Peligro: {text}"),
        new(Operation.Warning, FormPlace.Notice, "Advertencia: {text}"),
        new(Operation.Caution, FormPlace.Notice, "Precaución: {text}"),
        new(Operation.Notice, FormPlace.Notice, "Aviso: {text}"),
    ];

    private static IEnumerable<SentenceForm> Tails() =>
    [
        new(Operation.IfNot, FormPlace.Tail, "Si no, {action}"),
        new(Operation.Answer, FormPlace.Tail, "Espere la respuesta, como máximo {limit:time}"),
        new(Operation.StaysSo, FormPlace.Tail, "Sigue así durante {time}"),
    ];

    private static IEnumerable<NameForm> Names() =>
    [
        new(NameOperation.Of, "{name} de {letter}"),
        new(NameOperation.Own, "{letter} en su {name}"),
        new(NameOperation.Its, "su {name}"),
        new(NameOperation.EachOther, "cada otro {noun}"),
        new(NameOperation.EachOther, "cada otra {noun}"),
        new(NameOperation.Each, "cada {noun}"),
        new(NameOperation.AnyOther, "cualquier otro {noun}"),
        new(NameOperation.AnyOther, "cualquier otra {noun}"),
        new(NameOperation.Any, "cualquier {noun}"),
        new(NameOperation.Other, "otro {noun}"),
        new(NameOperation.Other, "otra {noun}"),
        new(NameOperation.OnSide, "{name} a la {side}"),
        new(NameOperation.OnSide, "{name} de la {side}"),
        new(NameOperation.OnOwnSide, "{name} del lado de {letter}"),
        new(NameOperation.ProtectionFor, "protección para {name}"),
        new(NameOperation.ProtectionHeld, "protección"),
    ];

    private static SmallWords Small() => new()
    {
        Articles = ["el", "la", "los", "las", "un", "una"],
        Article = "el",
        ArticlesByEnding =
        [
            (" maquinista", "el"), (" llave", "la"), (" parte", "la"), (" pared", "la"), (" fuente", "la"), (" mano", "la"), (" pendiente", "la"), (" sangre", "la"), (" base", "la"), (" torre", "la"), (" clase", "la"), (" serie", "la"), (" red", "la"),
            (" llaves", "las"), (" fuentes", "las"), (" manos", "las"), (" torres", "las"), (" luces", "las"), (" redes", "las"), (" señales", "las"), (" unidades", "las"), (" conexiones", "las"),
            (" agua", "el"), (" aire", "el"), (" sistema", "el"), (" día", "el"), (" mapa", "el"), (" programa", "el"),
            ("ión", "la"), ("dad", "la"), (" luz", "la"), (" señal", "la"), ("a", "la"), ("iones", "las"), ("as", "las"), ("os", "los"), ("es", "los"),
        ],
        Agreeing = [("el", "o"), ("la", "a"), ("los", "os"), ("las", "as")],
        Contractions = [new("del", "de", "el"), new("al", "a", "el")],
        IsNounFirst = true,
        And = "y",
        Or = "o",
        BeforeEachRole = "a",
        Then = ["y luego", "luego", "y"],
        If = ["si", "cuando"],
        SignVerbs = ["se ve", "se ven", "se oye", "se oyen", "se huele", "se siente", "se sienten"],
        StoppedText = "{title}: parada en el paso {step}",
        You = "Usted",
        Nobody = "nadie",
        Sides = ["derecha", "izquierda"],
        First = ["primero", "primera"],
        Last = ["último", "última"],
        NotSo = "no es así que {0}",
        Showed = "mostraba {0}",
        Replies = new Dictionary<Reply, string>
        {
            [Reply.None] = "no hubo respuesta a tiempo",
            [Reply.MayNot] = "la respuesta fue no: no me corresponde operarlo",
            [Reply.NotPermitted] = "la respuesta fue no: no tengo permiso para operarlo",
            [Reply.Locked] = "la respuesta fue no: está bloqueado y etiquetado",
            [Reply.Unsafe] = "la respuesta fue no: no es seguro hacerlo",
            [Reply.NoWay] = "la respuesta fue no: no puedo llegar",
            [Reply.Stuck] = "la respuesta fue no: no se mueve",
        }.ToImmutableDictionary(),
    };
}
