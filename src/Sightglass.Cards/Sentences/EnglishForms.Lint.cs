namespace Sightglass.Cards.Sentences;

/// <summary>Word lists of the lint rules in English.</summary>
public static partial class EnglishForms
{
    private static LintWords Lint() => new()
    {
        // ASD-STE100: 20 words in a procedure, 25 in what describes or warns.
        MostInStep = 20,
        MostInNotice = 25,
        Negative = ["all except", "all but", "not un", "do not fail", "unless", "not without", "never not", "none except", "not not"],
        Modal = ["should", "may", "might", "could", "ought", "can", "would"],
        Be = ["is", "are", "be", "being", "was", "were"],
        ParticipleEndings = ["ed"],
        Vague = ["about", "approximately", "roughly", "slowly", "quickly", "enough", "sufficient", "sufficiently", "normal", "normally", "as required", "as necessary", "if necessary", "adequate", "a while", "a little", "soon"],
        Harm = ["hurt", "hurts", "burn", "burns", "fall", "kill", "kills", "injure", "injures", "crush", "crushes", "cut", "cuts", "blind", "blinds", "scald", "scalds", "shock", "poison", "poisons", "damage",
            "damages", "trap", "traps", "choke", "slip", "slippery", "freeze", "deafen", "break", "breaks", "starve", "starves", "drown", "spoil", "spoils"],
        Avoid = ["keep", "stay", "stand", "wear", "do not", "never", "use", "step", "hold", "avoid", "let", "walk", "prove", "catch", "put on", "only"],
        NoticeVerbs = ["keep", "stay", "stand", "wear", "do", "never", "use", "step", "hold", "avoid", "let", "put"],
        Somebody = ["somebody", "someone", "another person", "another crew member", "your colleague", "your helper", "a helper", "one person", "the other person"],
        Again = ["repeat", "again", "as often as", "keep trying", "until it works", "several times", "a few times"],
        AnyOrder = ["whichever order", "any sequence", "either order", "order does not matter", "no particular order"],
        Either = ["either", "or else", "alternatively", "whichever"],
        NotNouns = ["of", "in", "to", "at", "on", "for", "from", "with", "by", "and", "or", "is", "are", "shows", "show", "the", "a", "an", "that", "until", "most", "least", "than", "as", "each", "other", "any", "if", "not", "no", "it"],
    };
}
