using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Changes;

/// <summary>Why a change of a book cannot be made, and what would be right.</summary>
internal static class ChangeMessages
{
    public static string NoTarget(string target, string where, IEnumerable<string> known) =>
        $"{where} has no item and no place `{target}`; {Nearest.DidYouMean(target, known) ?? "it may have been renamed: write the change by hand, or refuse it"}";

    public static string NoRoadNumber(string number, IEnumerable<string> known) => $"the book has no road number `{number}`; it has {string.Join(", ", known)}";

    public static string NoCar(string car, IEnumerable<string> known) => $"the book has no class of cars `{car}`; it has {string.Join(", ", known)}";

    public static string PlaceOnRoadNumber(string place) => $"the place `{place}` is the same on every road number; change it for the class, or change one of its items";

    public static string PlaceHas(string place, string property) => $"of the place `{place}` only its `text` can be changed, not `{property}`";

    public static string Changed(string target, string property, string was, string now) =>
        $"`{property}` of `{target}` is by now {Quote(now)}, and was {Quote(was)} when the change was thought of; look at it again";

    public static string Same(string target, string property) => $"`{property}` of `{target}` already says so; nothing is to be changed";

    public static string NotSingle(Span at, string property, string described) => $"{at}: `{property}` is {described}; a change replaces a single value: write it in the file";

    public static string Unwritable(string property) => $"`{property}` would hold a character that no file of a book can hold; leave it out";

    public static string TooLong(string property, int most) => $"`{property}` would be longer than {most} characters; say it shorter";

    public static string NotUnderstood(Span at) => $"{at}: the text here is written in a way that cannot be changed without touching its neighbours; write the change in the file";

    public static string WouldBeWrong(Diagnostic error) => $"with it the book would have an error: {error}";

    public static string HasErrors(Diagnostic error) => $"the book has errors, mend them first: {error}";

    public static string NotEffective(string target, string property) => $"`{property}` of `{target}` is overruled elsewhere, so that the change would not be seen; write it where it is overruled";

    public static string HasAlready(string section, string name) => $"`{section}` has an entry `{name}` already; give the new one another name";

    public static string NoEntry(string section, string name) => $"`{section}` has no entry `{name}` that could be changed; look at the book again";

    public static string NothingToChange(string name) => $"`{name}` says so already; nothing is to be changed";

    public static string HoldsComment(Span at) => $"{at}: what would be taken out here holds a comment of its author; write the change in the file";

    public static string HasFile(string path) => $"the book has a file {path} already; give the new one another name";

    public static string FileChanged(string path) => $"{path} was changed by somebody else in the meantime; look at the change again";

    private static string Quote(string text) => text.Length == 0 ? "not there" : $"`{(text.Length > 60 ? text[..60] + "…" : text)}`";
}
