using Sightglass.Basics.Diagnostics;

namespace Sightglass.Cards.Lint;

/// <summary>Texts of the lint rules.</summary>
internal static class LintMessages
{
    public static Diagnostic OneAction(Span at) => Warn("L001", at, "the step has more than one action", "give each its own step, or write `In any order:` or `At the same time:`");

    public static Diagnostic VerbFirst(Span at, string word) => Warn("L002", at, $"a step starts with a verb or with a condition, not with `{word}`", "begin with what to do");

    public static Diagnostic ConditionFirst(Span at) => Warn("L003", at, "the condition stands behind its action", "put it first: `If …, …`");

    public static Diagnostic NoComma(Span at) => Warn("L003", at, "no comma stands between the condition and its action", "put one there");

    public static Diagnostic Negative(Span at, string phrase) => Warn("L004", at, $"`{phrase}` says it the other way round", "say what to do, or name what is meant");

    public static Diagnostic DoubleNegative(Span at) => Warn("L004", at, "'not' is answered by 'if not'", "check for what must be so");

    public static Diagnostic Modal(Span at, string word) => Warn("L005", at, $"`{word}` leaves open whether to do it", "say it as an order");

    public static Diagnostic Passive(Span at) => Warn("L005", at, "the sentence does not say who does it", "say it as an order, or name who does it");

    public static Diagnostic TooLong(Span at, int words, int most) => Warn("L006", at, $"the sentence has {words} words", $"at most {most} are read safely: split it");

    public static Diagnostic TooManySentences(Span at, int count, int most) => Warn("L006", at, $"the text has {count} sentences", $"at most {most}");

    public static Diagnostic NounRow(Span at, string row) => Warn("L006", at, $"`{row}` is a row of more than three nouns", "join them by little words");

    public static Diagnostic NoticePlace(Span at) => Error("L007", at, "a notice stands directly before the step it belongs to", "move it there");

    public static Diagnostic NoticeAction(Span at, string word) => Error("L008", at, $"`{word}` is an action, and a notice holds none", "make it a step");

    public static Diagnostic NoticePart(Span at, string missing) => Warn("L009", at, $"the notice does not say {missing}", "write the hazard, what it does to you, and how to avoid it");

    public static Diagnostic NoTolerance(Span at) => Warn("L010", at, "a bare number is hardly ever shown exactly", "write `at least`, `at most`, or a word of the scale");

    public static Diagnostic NotTheUnit(Span at, string item, string unit) => Warn("L010", at, $"`{item}` is marked in {unit}", "use the unit of the instrument");

    public static Diagnostic Vague(Span at, string word) => Warn("L010", at, $"`{word}` means something else to everybody", "write a number with its unit, and a limit");

    public static Diagnostic NoPlace(Span at, string item) => Warn("L011", at, $"no step before says where to stand for `{item}`", "write `Go to PLACE.` before it");

    public static Diagnostic BackAndForth(Span at, string place, double metres) =>
        Warn("L011", at, FormattableString.Invariant($"the card goes back to `{place}` and has walked at least {metres:0} m for it"), "do all that is to be done there at once, if the order allows it");

    public static Diagnostic Somebody(Span at, string word) => Warn("L012", at, $"`{word}` names nobody", "name the role");

    public static Diagnostic NoIndication(Span at, string item) => Warn("L013", at, $"after `{item}` is operated, the card looks at nothing that would show it", "add what must be seen: `Check that …` or `Wait until …`");

    public static Diagnostic NoInterval(Span at) => Warn("L014", at, "the repetition has no interval", "add `, every TIME`");

    public static Diagnostic NoEnd(Span at) => Warn("L014", at, "the repetition has no end", "add `, at most N times`");

    public static Diagnostic EndlessLoop(Span at, int step) => Warn("L014", at, $"it goes back to step {step} without a limit", "use `Repeat steps … until …, at most N times`");

    public static Diagnostic AgainAndAgain(Span at, string word) => Warn("L014", at, $"`{word}` does not say how often and how long", "use `Repeat steps … until …, at most N times, every TIME`");

    public static Diagnostic MissedLimit(Span at) => Warn("L015", at, "it does not say what to do when the time is over", "add `If not, …`");

    public static Diagnostic SilentStart(Span at) => Warn("L015", at, "nothing before this long wait says that the time starts to run", "put a notice or `Tell …` before it");

    public static Diagnostic Alternatives(Span at) => Warn("L016", at, "alternatives are hidden in a sentence", "write `Do one of:` and a list");

    public static Diagnostic AnyOrder(Span at) => Warn("L018", at, "the free order is said in passing", "write `In any order:` and a list");

    public static Diagnostic NotReached(Span at, int step) => Error("L019", at, $"no way leads to step {step}", "remove it, or send somebody there");

    public static Diagnostic DeadEnd(Span at) => Error("L019", at, "from here no way leads to an end of the card", "give it a way out");

    public static Diagnostic OutOfSight(Span at, string item, string here, string places) =>
        Error("L020", at, $"from `{here}` nobody can read `{item}`", places.Length == 0 ? "no place is known from where it can be read" : $"it is read from {places}");

    public static Diagnostic OutOfReach(Span at, string item, string here, string places) =>
        Error("L020", at, $"from `{here}` nobody can operate `{item}`", places.Length == 0 ? "no place is known from where it can be operated" : $"it is operated from {places}");

    private static Diagnostic Warn(string code, Span at, string message, string fix) => new(code, Severity.Warning, at, message, fix);

    private static Diagnostic Error(string code, Span at, string message, string fix) => new(code, Severity.Error, at, message, fix);
}
