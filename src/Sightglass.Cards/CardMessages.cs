using Sightglass.Basics.Diagnostics;

namespace Sightglass.Cards;

/// <summary>Every text that reading and compiling a card may answer with. Codes are stable; docs/cards.md lists them.</summary>
internal static class CardMessages
{
    public static Diagnostic NotACard(Span at, string form) => Error("C001", at, "this is not a card: no line gives its title", $"begin with `{form}`");

    public static Diagnostic TooLarge(Span at, int most) => Error("C002", at, $"too long to be a card or a line of one (more than {most} characters)", "split it");

    public static Diagnostic LineNotUnderstood(Span at, string? near) =>
        Error("C003", at, "this line is no head line, no notice, no step and no comment", near ?? "number a step (`1. …`), or indent a line that goes on the line above");

    public static Diagnostic SentenceNotUnderstood(Span at, string text, string? fix) => Error("C004", at, $"not understood: `{Short(text)}`", fix);

    public static Diagnostic HeadTwice(Span at, string label, Span first) => Error("C005", at, $"`{label}` is given twice; the first is on line {first.Line}", "keep one");

    public static Diagnostic HeadMissing(Span at, string form) => Error("C006", at, "the card lacks a line of its head", $"write `{form}`");

    public static Diagnostic NumberTwice(Span at, int number) => Error("C007", at, $"there are two steps {number}", "number the steps 1, 2, 3, …; `format` does it once each number stands once");

    public static Diagnostic NumberOutOfOrder(Span at, int number, int wanted) => Warning("C008", at, $"step {number} stands where step {wanted} should", "`format` renumbers the steps and the jumps to them");

    public static Diagnostic StrayListItem(Span at) => Error("C009", at, "a list line stands under no step that takes a list", "put it under a step such as `In any order:`");

    public static Diagnostic EmptyList(Span at) => Error("C010", at, "the step takes a list, and none follows", "write each of the list on its own line: `- …`");

    public static Diagnostic StrayTail(Span at) => Error("C011", at, "this completes a sentence, and none stands before it in the step", null);

    public static Diagnostic NoSteps(Span at) => Error("C012", at, "the card has no steps", "write `1. …`");

    public static Diagnostic UnknownName(string code, Span at, string sort, string typed, string? nearest, string? word) =>
        Error(code, at, word is null ? $"no {sort} is called `{Short(typed)}`" : $"no {sort} is called `{Short(typed)}`, which this means for `{word}`", nearest is null ? null : $"did you mean `{nearest}`?");

    public static Diagnostic UnknownPosition(Span at, string item, string typed, string positions) =>
        Error("C026", at, $"`{item}` has no position `{Short(typed)}`", positions.Length == 0 ? "it cannot be operated" : $"its positions are {positions}");

    public static Diagnostic UnknownScaleWord(Span at, string item, string typed, string words) =>
        Error("C027", at, $"the scale of `{item}` has no word `{Short(typed)}`", words.Length == 0 ? "write a number with its unit" : $"its words are {words}");

    public static Diagnostic NotWrittenDown(Span at, string typed, string? nearest) =>
        Error("C028", at, $"nothing was read as `{Short(typed)}` before", nearest is null ? "write `Read … as …` in an earlier step" : $"did you mean `{nearest}`?");

    public static Diagnostic NameTaken(Span at, string name) => Error("C029", at, $"the name `{name}` is taken already", "choose another");

    public static Diagnostic Ambiguous(Span at, string typed, string choices) => Error("C030", at, $"`{Short(typed)}` may mean {choices}", "name one of them");

    public static Diagnostic NotOne(Span at, string typed) => Error("C031", at, $"`{Short(typed)}` means several, and only one can be meant here", "name one");

    public static Diagnostic NotOperated(Span at, string item) => Error("C033", at, $"`{item}` cannot be operated", null);

    public static Diagnostic NotRead(Span at, string item) => Error("C034", at, $"`{item}` shows nothing that can be read", null);

    public static Diagnostic WrongDimension(Span at, string item, string shows, string given) => Error("C035", at, $"`{item}` shows {shows}, and this is {given}", "use the unit of its scale");

    public static Diagnostic OffScale(Span at, string item, string scale) => Warning("C036", at, $"`{item}` can never show this: its scale is {scale}", null);

    public static Diagnostic FactInCondition(Span at, string fact) =>
        Error("C037", at, $"`{Short(fact)}` is a fact, which nobody can see; facts stand only in Must never and Done when", "say what an indication shows or what is seen, heard or smelled");

    public static Diagnostic NotAFact(Span at, string typed) => Error("C038", at, $"`{Short(typed)}` is something that is seen; here stands what is true in fact", "declare a fact in the book and name it");

    public static Diagnostic NoOtherwise(Span at) => Error("C040", at, "it does not say what to do if not", "add `If not, go to step N.` or `If not, stop.`");

    public static Diagnostic NoLimit(Span at) => Error("C041", at, "it does not say how long at most", "add `, at most TIME`");

    public static Diagnostic MixedAndOr(Span at) => Error("C042", at, "'and' and 'or' are mixed, which two people read differently", "split it into two steps");

    public static Diagnostic RepeatRange(Span at, string why) => Error("C043", at, why, "write Repeat right after the last step it repeats, and name steps in order");

    public static Diagnostic NotPositive(Span at) => Error("C044", at, "a time must be longer than nothing", null);

    public static Diagnostic Braces(Span at) => Error("C045", at, "a brace is not closed, or closes nothing", "write `{NAME}`");

    public static Diagnostic BareLetter(Span at, string letter) => Warning("C046", at, $"`{letter}` itself is said here, not what it stands for", $"write `{{{letter}}}`");

    public static Diagnostic NotACalculation(Span at, string text, string why) => Error("C047", at, $"`{Short(text)}` cannot be calculated: {why}", "use names read before, numbers, + − × ÷ and parentheses");

    public static Diagnostic WhenSentence(Span at) => Error("C048", at, "'when' leaves open whether to wait for it", "write `Wait until …, at most …` as a step of its own, or `If …, …`");

    public static Diagnostic NoProtectionHeld(Span at) => Error("C049", at, "which protection is given back is not clear", "name it");

    /// <summary>Of a card that comes to call itself.</summary>
    public const string CircleCode = "C052";

    public static Diagnostic NoSuchCard(Span at, string title, string? nearest) =>
        Error("C051", at, $"the book has no card `{Short(title)}`", nearest is null ? "write the title as it stands on the card" : $"did you mean `{nearest}`?");

    public static Diagnostic CallsItself(Span at, IEnumerable<string> titles) =>
        Error("C052", at, $"the card would come to call itself: {string.Join(" → ", titles.Select(t => $"`{t}`"))}", "a card may not call one that leads back to it; use `Repeat steps …`");

    public static Diagnostic CalledHasErrors(Span at, string title, Diagnostic first) =>
        Error("C053", at, $"the card `{title}` has errors: {first.Span.Path}:{first.Span.Line}: {first.Message}", "mend that card first");

    public static Diagnostic LetterNotSet(Span at, string title, string letter, IEnumerable<string> words) =>
        Error("C054", at, $"the card `{title}` has a letter {letter}, and it is not said what that stands for", $"add ` with {letter} = …`, one of {string.Join(", ", words)}");

    public static Diagnostic NoSuchLetter(Span at, string title, string letter, IEnumerable<string> letters) =>
        Error("C054", at, $"the card `{title}` has no letter {letter}", letters.Any() ? $"it has {string.Join(", ", letters)}" : "leave `with …` away");

    public static Diagnostic NotOfLetter(Span at, string title, string letter, string word, IEnumerable<string> words) =>
        Error("C054", at, $"in the card `{title}` the letter {letter} cannot stand for `{Short(word)}`", $"it stands for one of {string.Join(", ", words)}");

    public static Diagnostic NotApart(Span at) =>
        Error("C057", at, "at the same time needs a line for each person, and no other person's step in it", "begin each line with who does it: `- Engineer: …`");

    public static Diagnostic LeavesOthers(Span at) =>
        Error("C058", at, "a line of `At the same time` may not go to another step: the others would be left behind", "look in a step after it");

    public static Diagnostic NotSetThere(Span at, string where, IEnumerable<string> targets) =>
        Error("C059", at, $"the book sets no such protection at `{where}`", targets.Any() ? $"it is set at {string.Join(", ", targets.Distinct(StringComparer.Ordinal).Take(6).Select(t => $"`{t}`"))}" : "declare it in the book");

    public static Diagnostic NotSet(Span at, string protection, string role) =>
        Error("C059", at, $"`{protection}` is not set at places", role.Length > 0 ? $"ask for it: `Ask the {role} for …`" : "lock and tag, or chock, the item");

    public static Diagnostic NotConnected(Span at, string item, string other, IEnumerable<string> known) =>
        Error("C059", at, $"the book does not connect `{item}` to `{other}`", known.Any() ? $"it connects to {string.Join(", ", known.Select(k => $"`{k}`"))}" : "add `connects to` in the book");

    public static Diagnostic CalledForOthers(Span at, string title, IEnumerable<string> roles, IEnumerable<string> others) =>
        Warning("C055", at, $"the card `{title}` is for {string.Join(", ", roles)}, and is done here by {string.Join(", ", others)}", null);

    public static Diagnostic CalledNeeds(Span at, string title, IEnumerable<string> needs) =>
        Warning("C056", at, $"the card `{title}` needs {string.Join(", ", needs)}, and this card does not say so", "add it to `Needs:`");

    public static Diagnostic NoSuchStep(Span at, int number) => Error("L019", at, $"there is no step {number}", null);

    public static Diagnostic NotTheLabel(Span at, string typed, string label) => Error("L017", at, $"`{Short(typed)}` is not the label in the book", $"write `{label}`");

    public static Diagnostic MayNotOperate(Span at, string item, string who, string roles, string? asking) => Warning("C060", at, $"`{item}` may be operated by {who}; this step is done by {roles}", asking is null ? null : $"ask somebody who may: `{asking}. Wait for the answer, at most TIME. If not, …`");

    public static Diagnostic PermissionNotAsked(Span at, string item, string role) =>
        Warning("C061", at, $"`{item}` may be operated only with permission of `{role}`, which no step before asks for", $"write `Ask the {role} for permission to operate the {item}.` before it");

    public static Diagnostic NotTold(Span at, string item, string role) => Warning("C062", at, $"`{role}` must be told when `{item}` is operated, and the card tells nobody of that name", $"add `Tell the {role}: …`, or name it after `told:`");

    public static Diagnostic NotForPerson(Span at, string role) => Warning("C063", at, $"the card is not for `{role}`, who does this step", "name the role after `For:`");

    public static Diagnostic NotProtected(Span at, string hazard, string protection) =>
        Warning("C064", at, $"`{hazard}` injures whoever does this without `{protection}`, and no step before brings that about", "ask for it, or set it, in a step before");

    public static Diagnostic NeverGivenBack(Span at, string protection) => Warning("C065", at, $"`{protection}` is asked for, and no step gives it back", "add `Give back protection.`");

    public static Diagnostic StopsHolding(Span at, string protection) =>
        Warning("C075", at, $"the card stops here while `{protection}` may still be held, and does not say so", "go to a step that gives it back or removes it before it stops, or say in the stop that it stays");

    public static Diagnostic TooManyLetters(Span at, int most) => Error("C069", at, $"a card has at most {most} letters", "write several cards");

    public static Diagnostic TooManyWords(Span at, int most) => Error("C069", at, $"a letter stands for at most {most} words", "write several cards");

    public static Diagnostic NoLamp(Span at, string item) => Error("C074", at, $"`{item}` is no lamp, and cannot be lit or dark", "say what it shows, or how it stands");

    public static Diagnostic NoneOfNoun(Span at, string noun, IReadOnlyList<string> nouns) =>
        Error("C071", at, $"the book has nothing to go through as `{Short(noun)}`", nouns.Count > 0 ? $"it has {string.Join(", ", nouns.Take(6).Select(n => $"`{n}`"))}; or list the words: `For each {Short(noun)} out of …:`" : $"list the words: `For each {Short(noun)} out of …:`");

    public static Diagnostic NotOfNoun(Span at, string typed, string noun, IReadOnlyList<string> words) =>
        Error("C072", at, $"`{Short(typed)}` is not one that `each {Short(noun)}` goes through", $"name one of {string.Join(", ", words.Take(8))}{(words.Count > 8 ? ", …" : "")}, or write `the first` and `the last`");

    public static Diagnostic NotInRound(Span at, string noun) =>
        Error("C073", at, $"no `For each {Short(noun)}` goes round here", "write it in the list of one, with its noun");

    public static Diagnostic TooManySteps(Span at, int most) => Error("C070", at, $"with its rounds and the cards it calls, the card has more than {most} operations", "go through fewer, or call fewer");

    public static Diagnostic NotNoticedThere(Span at, string sign, string place, IEnumerable<string> places) =>
        Error("C068", at, $"from `{place}` nobody can notice `{sign}`", $"it is noticed from {string.Join(", ", places.Select(p => $"`{p}`"))}");

    public static Diagnostic NotAskedFor(Span at) => Error("C066", at, "only operating a control can be asked for", "write such as `Ask the ROLE to turn ITEM to POSITION`; what is to be said is a `Tell`");

    public static Diagnostic AsksOneself(Span at, string role) => Error("C067", at, $"the {role} asks the {role}", "write what to do, without `Ask`");

    private static Diagnostic Error(string code, Span at, string message, string? fix) => new(code, Severity.Error, at, message, fix);

    private static Diagnostic Warning(string code, Span at, string message, string? fix) => new(code, Severity.Warning, at, message, fix);

    private static string Short(string text) => text.Length <= 80 ? text : text[..77] + "…";
}
