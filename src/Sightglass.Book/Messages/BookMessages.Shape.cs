using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Messages;

/// <content>Keys and values.</content>
internal static partial class BookMessages
{
    public static Diagnostic UnknownKey(Span span, string key, string owner, IReadOnlyCollection<string> known)
    {
        int colon = key.IndexOf(':', StringComparison.Ordinal);
        string? fix = colon > 0 && known.Contains(key[..colon])
            ? $"put a space after the colon: `{key[..colon]}: …`"
            : Suggest(key, known, "known are") ?? $"known are: {string.Join(", ", known.Order(StringComparer.Ordinal).Take(12).Select(n => $"`{n}`"))}, …";
        return Error("B030", span, $"unknown key {Quote(key)} in {owner}", fix);
    }

    public static Diagnostic TextWithComma(Span span, string rest) => Error("B030", span, $"{Quote(rest)} stands behind a comma and reads as a key", "put quotes round a text that has a comma");

    public static Diagnostic MissingKey(Span span, string key, string owner, string example) => Error("B031", span, $"{owner} lacks `{key}`", $"add `{key}: {example}`");

    public static Diagnostic WrongShape(Span span, string owner, string expected, string found) => Error("B032", span, $"{owner} must be {expected}, not {found}");

    public static Diagnostic DeclaredTwice(Span span, string what, string name, Span first) => Error("B033", span, $"{what} {Quote(name)} is declared a second time; the first is at {first}", "rename or delete one of them");

    public static Diagnostic Empty(Span span, string owner) => Error("B034", span, $"{owner} has no value", "write one, or delete the key");

    public static Diagnostic NotAChoice(Span span, string owner, string text, IEnumerable<string> choices) =>
        Error("B035", span, $"{Quote(text)} is not possible for {owner}", Nearest.DidYouMean(text, choices) ?? $"possible are: {string.Join(", ", choices.Select(c => $"`{c}`"))}");

    public static Diagnostic NotAPin(Span span, string text) => Error("B106", span, $"{Quote(text)} is not the number of a pin", "write a whole number from 1 to 999 before the name of its wire");

    public static Diagnostic PinTwice(Span span, string text) => Error("B106", span, $"pin {Quote(text)} is there twice", "give each pin one wire");

    public static Diagnostic NotYesNo(Span span, string owner, string text) => Error("B036", span, $"{owner} is {Quote(text)}", "write `yes` or `no`");

    public static Diagnostic NotADate(Span span, string text) => Error("B037", span, $"{Quote(text)} is not a date", "write year-month-day, such as `2019-05-01`");

    public static Diagnostic BadName(Span span, string name, string why) => Error("B038", span, $"{Quote(name)} cannot be a name: {why}", "names are words of letters and digits with single spaces; comma, hyphen, point and apostrophe are allowed");

    public static Diagnostic OutOfRange(Span span, string owner, string text, string limits) => Error("B039", span, $"{owner} is {Quote(text)}", $"it must be {limits}");

    public static Diagnostic BadTable(Span span, string message, string fix) => Error("B040", span, message, fix);

    public static Diagnostic BadPath(Span span, string why) => Error("B041", span, why, "path data is letters M L H V C S Q T A Z with numbers, in metres, beginning with M");

    public static Diagnostic UnknownUnit(Span span, string unit, IEnumerable<string> units) => Error("B042", span, $"unknown unit {Quote(unit)}", Nearest.DidYouMean(unit, units) ?? "write one unit for each dimension, such as `L`, `psi`, `degC`");

    public static Diagnostic TwoUnits(Span span, string unit, string other, string dimension) => Error("B043", span, $"{Quote(unit)} and {Quote(other)} both say how {dimension} is shown", "keep one of them");

    public static Diagnostic UnknownKind(Span span, string kind, IEnumerable<string> kinds) =>
        Error("B050", span, $"there is no kind {Quote(kind)}", Nearest.DidYouMean(kind, kinds) ?? $"kinds are: {string.Join(", ", kinds.Select(k => $"`{k}`"))}");

    public static Diagnostic OwnPositions(Span span, string kind, IEnumerable<string> positions) => Error("B051", span, $"`positions` cannot be given for a {kind}", $"it has: {string.Join(", ", positions.Select(p => $"`{p}`"))}");

    public static Diagnostic NoSuchPosition(Span span, string position, string item, IReadOnlyCollection<string> positions) =>
        Error("B052", span, $"{Quote(item)} has no position {Quote(position)}", positions.Count == 0 ? "it cannot be operated" : Suggest(position, positions, "it has"));

    public static Diagnostic OffTheScale(Span span, string owner) => Error("B053", span, $"{owner} lies outside of the scale", "keep it within `scale`");

    public static Diagnostic BadCaution(Span span) => Error("B054", span, "a caution needs one signal word", "write `danger: …`, `warning: …`, `caution: …` or `notice: …`");

    public static Diagnostic OneOfKeys(Span span, string key, string other, string owner) => Error("B058", span, $"{owner} has `{key}` beside `{other}`", "keep one of them");

    public static Diagnostic LeavesFolder(Span span, string path) => Error("B057", span, $"{Quote(path)} does not lie in the book's folder", "write a path below it with forward slashes, such as `photos/valve.jpg`");

    public static Diagnostic NoScale(Span span) => Error("B055", span, "the indication lacks `scale`", "add `scale: 0 % .. 100 %`");

    public static Diagnostic BadCount(Span span, string message, string fix) => Error("B056", span, message, fix);
}
