namespace Sightglass.Cards.Sentences;

/// <summary>Word lists of the lint rules in Spanish.</summary>
public static partial class SpanishForms
{
    private static LintWords Lint() => new()
    {
        // A quarter more than English: articles, and "de" where English puts noun before noun. Common practice, no source.
        MostInStep = 25,
        MostInNotice = 31,
        Negative = ["todos menos", "todas menos", "excepto", "no deje de", "a menos que", "no sin", "nunca no", "ninguno salvo"],
        Modal = ["debería", "podría", "puede", "pudiera", "quizá", "quizás", "convendría"],
        Be = ["es", "son", "ser", "siendo", "fue", "fueron"],
        ParticipleEndings = ["ado", "ada", "ido", "ida", "ados", "adas", "idos", "idas"],
        Vague = ["aproximadamente", "más o menos", "cerca de", "despacio", "rápido", "rápidamente", "bastante", "suficiente", "suficientemente", "normal", "normalmente", "según se requiera", "según sea necesario", "si es necesario", "adecuado", "un rato", "un poco", "pronto"],
        Harm = ["lesiona", "lesionar", "lesionarle", "lesione", "quema", "queman", "quemar", "quemarle", "quemarlo", "quemarse", "caer", "caerse", "cae", "mata", "matan", "matar", "hiere", "herir", "aplasta", "aplastan", "aplastar", "aplastarle", "aplastarlo", "corta", "cortan", "ciega", "cegar", "cegarlo",
            "escalda", "descarga", "electrocuta", "envenena", "intoxica", "daña", "dañan", "dañar", "atrapa", "atrapan", "asfixia", "resbala", "resbalar", "resbaladizo", "congela", "ensordece", "rompe", "rompen", "romper", "romperle", "ahoga", "estropea",
            "arde", "arden", "golpea", "golpear", "perder", "pierde", "arrolla", "para"],
        Avoid = ["mantenga", "manténgase", "quédese", "póngase", "use", "lleve", "no", "nunca", "pise", "sujete", "evite", "deje", "camine", "pruebe", "compruebe", "recoja", "aléjese", "solo", "sólo", "párese", "ponga", "aleje", "vacíe", "cierre", "abra"],
        NoticeVerbs = ["mantenga", "manténgase", "quédese", "póngase", "no", "nunca", "use", "lleve", "pise", "sujete", "evite", "deje", "aleje", "aléjese", "ponga"],
        Somebody = ["alguien", "otra persona", "otro tripulante", "su colega", "su ayudante", "un ayudante", "una persona", "la otra persona"],
        Again = ["repita", "otra vez", "de nuevo", "cuantas veces", "siga intentando", "hasta que funcione", "varias veces", "unas cuantas veces"],
        AnyOrder = ["cualquier secuencia", "en el orden que sea", "el orden no importa", "sin un orden"],
        Either = ["o bien", "o si no", "alternativamente", "cualquiera de"],
        NotNouns = ["de", "en", "a", "por", "para", "con", "y", "o", "es", "son", "muestra", "el", "la", "los", "las", "un", "una", "que", "hasta", "como", "más", "menos", "cada", "otro", "otra", "cualquier", "si", "no", "del", "al", "su"],
    };
}
