namespace Sightglass.Cards.Sentences;

/// <summary>What steps say in Spanish.</summary>
public static partial class SpanishForms
{
    private const FormHints Operates = FormHints.Action | FormHints.Control;

    private static IEnumerable<SentenceForm> Steps() => [.. Moves(), .. Operating(), .. Looking(), .. Saying(), .. Steering(), .. Protecting()];

    private static IEnumerable<SentenceForm> Moves() =>
    [
        new(Operation.Jump, FormPlace.Step, "Vaya a el paso {step}", "pasó al paso {step}", hints: FormHints.Leaves),
        new(Operation.JumpToEnd, FormPlace.Step, "Vaya a el final", "pasó al final", hints: FormHints.Leaves),
        new(Operation.Go, FormPlace.Step, "Vaya a {place}", "fue a {place}", hints: FormHints.Action),
        new(Operation.Go, FormPlace.Step, "Camine a {place}", hints: FormHints.Action),
        new(Operation.WalkFrom, FormPlace.Step, "Camine de {from:place} a {place}", hints: FormHints.Action),
        new(Operation.WalkFrom, FormPlace.Step, "Vaya de {from:place} a {place}", hints: FormHints.Action),
    ];

    private static IEnumerable<SentenceForm> Operating() =>
    [
        new(Operation.Open, FormPlace.Step, "Abra {item}", "abrió {item}", position: "open", hints: Operates),
        new(Operation.Close, FormPlace.Step, "Cierre {item}", "cerró {item}", position: "closed", hints: Operates),
        new(Operation.Turn, FormPlace.Step, "Ponga {item} en {position}", "puso {item} en {position}", hints: Operates),
        new(Operation.Turn, FormPlace.Step, "Gire {item} a {position}", hints: Operates),
        new(Operation.Turn, FormPlace.Step, "Mueva {item} a {position}", hints: Operates),
        new(Operation.TurnUntil, FormPlace.Step, "Ponga {item} en {position} hasta ver que {condition}[, como máximo {limit:time}]", hints: Operates | FormHints.Limited),
        new(Operation.TurnUntil, FormPlace.Step, "Gire {item} a {position} hasta ver que {condition}[, como máximo {limit:time}]", hints: Operates | FormHints.Limited),
        new(Operation.TurnUntil, FormPlace.Step, "Mueva {item} a {position} hasta ver que {condition}[, como máximo {limit:time}]", hints: Operates | FormHints.Limited),
        new(Operation.TurnOn, FormPlace.Step, "Encienda {item}", "encendió {item}", position: "on", hints: Operates),
        new(Operation.TurnOff, FormPlace.Step, "Apague {item}", "apagó {item}", position: "off", hints: Operates),
        new(Operation.Push, FormPlace.Step, "Pulse {item} una vez", "pulsó {item}", position: "pushed", hints: Operates),
        new(Operation.Push, FormPlace.Step, "Oprima {item} una vez", position: "pushed", hints: Operates),
        new(Operation.Push, FormPlace.Step, "Pulse {item}", position: "pushed", hints: Operates),
        new(Operation.Push, FormPlace.Step, "Oprima {item}", position: "pushed", hints: Operates),
        new(Operation.Start, FormPlace.Step, "Arranque {item}", "arrancó {item}", position: "running", hints: Operates),
        new(Operation.StopMachine, FormPlace.Step, "Pare {item}", "paró {item}", position: "stopped", hints: Operates),
        new(Operation.Hold, FormPlace.Step, "Mantenga {item} en {position} durante {limit:time}", "mantuvo {item} en {position} durante {limit}", hints: Operates),
        new(Operation.HoldUntil, FormPlace.Step, "Mantenga {item} en {position} hasta ver que {condition}[, como máximo {limit:time}]", "mantuvo {item} en {position} hasta ver que {condition}",
            "mantuvo {item} en {position} durante {limit}, y no fue así: {condition}", hints: Operates | FormHints.Limited),
        new(Operation.Connect, FormPlace.Step, "Conecte {item} con {other:item}", "conectó {item} con {other}", position: "connected", hints: Operates),
        new(Operation.Disconnect, FormPlace.Step, "Desconecte {item}", "desconectó {item}", position: "disconnected", hints: Operates),
    ];

    private static IEnumerable<SentenceForm> Looking() =>
    [
        new(Operation.Check, FormPlace.Step, "Compruebe que {condition}", "comprobó, y era así: {condition}", "comprobó, y no era así: {condition}", hints: FormHints.Looks),
        new(Operation.Check, FormPlace.Step, "Asegúrese de que {condition}", hints: FormHints.Looks),
        new(Operation.LookWhether, FormPlace.Step, "Mire si {sign}", "miró, y {sign}", "miró, y no era así: {sign}", hints: FormHints.Looks),
        new(Operation.Look, FormPlace.Step, "Busque {sign}", "miró, y {sign}", "miró, y no era así: {sign}", hints: FormHints.Looks),
        new(Operation.LookAt, FormPlace.Step, "Busque {sign} en {place}", "miró en {place}, y {sign}", "miró en {place}, y no era así: {sign}", hints: FormHints.Looks),
        new(Operation.Read, FormPlace.Step, "Lea {item} como {letter:name}", "leyó {item}", hints: FormHints.Looks),
        new(Operation.Wait, FormPlace.Step, "Espere {limit:time}", "esperó {limit}", hints: FormHints.Action),
        new(Operation.Wait, FormPlace.Step, "Espere durante {limit:time}", hints: FormHints.Action),
        new(Operation.WaitUntil, FormPlace.Step, "Espere hasta ver que {condition}[, como máximo {limit:time}]", "esperó hasta ver que {condition}", "esperó {limit}, y no fue así: {condition}",
            hints: FormHints.Looks | FormHints.Limited | FormHints.Action),
        new(Operation.WaitUntil, FormPlace.Step, "Espere hasta que {condition}[, como máximo {limit:time}]", hints: FormHints.Looks | FormHints.Limited | FormHints.Action),
    ];

    private static IEnumerable<SentenceForm> Saying() =>
    [
        new(Operation.Tell, FormPlace.Step, "Avise a {roles}: {text}", "avisó a {roles}: {text}", hints: FormHints.Action),
        new(Operation.AskPermission, FormPlace.Step, "Pida a {role} permiso para operar {item}", "pidió a {role} permiso para operar {item}, y lo obtuvo",
            "pidió a {role} permiso para operar {item}, y no lo obtuvo", hints: FormHints.Action | FormHints.Limited),
        new(Operation.AskRequest, FormPlace.Step, "Pida a {role}: {request:action}", "pidió a {role}: «{request}», y oyó que estaba hecho", "pidió a {role}: «{request}», y {answer}",
            hints: FormHints.Action | FormHints.Limited),
        new(Operation.AskProtection, FormPlace.Step, "Pida {protection} a {role}", "pidió protección ({protection}) a {role}, y la obtuvo",
            "pidió protección ({protection}) a {role}, y no la obtuvo", hints: FormHints.Action | FormHints.Limited),
        new(Operation.GiveBack, FormPlace.Step, "Devuelva {protection}", "devolvió la protección ({protection})", hints: FormHints.Action),
    ];

    private static IEnumerable<SentenceForm> Steering() =>
    [
        new(Operation.If, FormPlace.Step, "Si {condition}, {action}", "vio que {condition}", "vio que no era así: {condition}", hints: FormHints.Looks),
        new(Operation.If, FormPlace.Step, "Si {condition} {action}", hints: FormHints.Looks),
        new(Operation.When, FormPlace.Step, "Cuando {condition}, {action}"),
        new(Operation.AnyOrder, FormPlace.Step, "En cualquier orden:[ {actions}]"),
        new(Operation.OneOf, FormPlace.Step, "Haga una de estas cosas:[ {actions}]"),
        new(Operation.SameTime, FormPlace.Step, "A el mismo tiempo:[ {actions}]"),
        new(Operation.Repeat, FormPlace.Step, "Repita los pasos {first:step} a {last:step} hasta ver que {condition}[, como máximo {count} veces][, cada {period:time}]",
            "terminó con los pasos {first} a {last}: {condition}", "volvió al paso {first}, pues no era así: {condition}", hints: FormHints.Looks | FormHints.Limited),
        new(Operation.Repeat, FormPlace.Step, "Repita el paso {first:step} hasta ver que {condition}[, como máximo {count} veces][, cada {period:time}]", "terminó con el paso {first}: {condition}",
            "volvió al paso {first}, pues no era así: {condition}", hints: FormHints.Looks | FormHints.Limited),
        new(Operation.DoCard, FormPlace.Step, "Haga la ficha \"{title:words}\"", "tomó la ficha \"{title}\"", hints: FormHints.Action),
        new(Operation.DoCard, FormPlace.Step, "Haga la ficha \"{title:words}\" con {letter:name} = {word:words}", "tomó la ficha \"{title}\" con {letter} = {word}", hints: FormHints.Action),
        new(Operation.DoCard, FormPlace.Step, "Haga la ficha \"{title:words}\" con {word:words}", hints: FormHints.Action),
        new(Operation.ForEach, FormPlace.Step, "Para cada {noun} desde {first:words} hasta {last:words}:[ {actions}]"),
        new(Operation.ForEach, FormPlace.Step, "Para cada {noun:words} de entre {domain:texts}:[ {actions}]"),
        new(Operation.ForEach, FormPlace.Step, "Para cada {noun}:[ {actions}]"),
        new(Operation.ForEach, FormPlace.Step, "Para cada {noun} de el tren:[ {actions}]"),
        new(Operation.NextRound, FormPlace.Step, "Siga con el siguiente {noun:words}", "siguió con el siguiente {noun}", hints: FormHints.Leaves),
        new(Operation.NextRound, FormPlace.Step, "Siga con la siguiente {noun:words}", hints: FormHints.Leaves),
        new(Operation.Stop, FormPlace.Step, "Deténgase[, y avise a {roles}][: {text}]", "se detuvo ahí", hints: FormHints.Leaves),
    ];

    private static IEnumerable<SentenceForm> Protecting() =>
    [
        new(Operation.LockAndTag, FormPlace.Step, "Bloquee y etiquete {item}", "bloqueó y etiquetó {item}", hints: FormHints.Action),
        new(Operation.Unlock, FormPlace.Step, "Quite el bloqueo y la etiqueta de {item}", "quitó el bloqueo y la etiqueta de {item}", hints: FormHints.Action),
        new(Operation.Chock, FormPlace.Step, "Calce {item}", "calzó {item}", hints: FormHints.Action),
        new(Operation.Unchock, FormPlace.Step, "Quite la calza de {item}", "quitó la calza de {item}", hints: FormHints.Action),
        new(Operation.SetProtection, FormPlace.Step, "Coloque {protection} en {place}", "colocó {protection} en {place}", hints: FormHints.Action),
        new(Operation.RemoveProtection, FormPlace.Step, "Retire {protection} de {place}", "retiró {protection} de {place}", hints: FormHints.Action),
    ];
}
