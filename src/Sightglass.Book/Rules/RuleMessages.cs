using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Rules;

/// <summary>What can be wrong with a folder of rules beside what can be wrong with any file of a book.</summary>
internal static class RuleMessages
{
    public static Diagnostic NoFolder(string folder) => Error("R001", Span.None, $"there is no folder `{folder}`", "name the folder that holds a set of rules, such as `rules/us-cfr49`");

    public static Diagnostic NoFiles(string folder) => Error("R002", Span.None, $"`{folder}` has no .yaml file", "write `rules: NAME OF THE PUBLICATION` and `rows:` into one");

    public static Diagnostic BadParagraph(Span span, string text) =>
        Error("R003", span, $"`{Short(text)}` cannot name a row", "write the paragraph: letters, digits, spaces, points, hyphens, commas and round brackets, no more than 60");

    public static Diagnostic NoLimit(Span span, string key) => Error("R004", span, $"`{key}` is held against nothing", "add `at most: …` or `at least: …`");

    public static Diagnostic NothingToLimit(Span span, string key) => Error("R005", span, $"`{key}` limits nothing", "add `value: …`, or a `test:` that measures it");

    public static Diagnostic Beside(Span span, string key, string other) => Error("R006", span, $"the row has `{key}` beside `{other}`", "keep one of them, and put the other into a row of its own");

    public static Diagnostic Outcomes(Span span, string keys) => Error("R007", span, "the test makes no single number of what it follows", $"write one of {keys}");

    public static Diagnostic Unused(Span span, string name) => new("R008", Severity.Warning, span, $"no row speaks of `{name}`", "use it in a row, or delete it");

    private static string Short(string text) => text.Length <= 60 ? text : $"{text[..60]}…";

    private static Diagnostic Error(string code, Span span, string message, string fix) => new(code, Severity.Error, span, message, fix);
}
