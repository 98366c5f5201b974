using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Language;

/// <summary>Findings about a book in another language (T001…T008, T011).</summary>
internal static class WordsMessages
{
    private const int Shown = 60;

    public static Diagnostic SaidTwice(BookWord word, BookWord first) =>
        new("T001", Severity.Error, word.Span, $"{Quote(word.Text)} is translated twice, first at {first.Span}", "delete one of them");

    public static Diagnostic OtherHoles(BookWord word) =>
        new("T002", Severity.Error, word.Span, $"{Quote(word.Says)} has other holes than {Quote(word.Text)}", "write each hole of the text in braces, as it stands there");

    public static Diagnostic NotInBook(BookWord word, string? near) =>
        new("T003", Severity.Warning, word.Span, $"the book does not say {Quote(word.Text)}", near is null ? "delete it, or write the text as the book has it now" : $"the nearest text of the book is {Quote(near)}");

    public static Diagnostic NotTranslated(Span span, string language, string text) =>
        new("T004", Severity.Warning, span, $"{Quote(text)} is not said in {language}", "add it under `texts`");

    public static Diagnostic NoWords(string language, string code) =>
        new("T011", Severity.Warning, default, $"the book says nothing in {language}", $"write {Quote($"{WordsReader.Folder}/{code}.yaml")}; `--missing FILE` makes a beginning");

    public static Diagnostic UnknownLanguage(Span span, string code, IEnumerable<string> known) =>
        new("T005", Severity.Error, span, $"the program does not speak {Quote(code)}", $"it speaks {string.Join(", ", known.Select(k => $"`{k}`"))}");

    public static Diagnostic SameName(BookWord word, BookWord first) =>
        new("T006", Severity.Error, word.Span, $"{Quote(word.Text)} and {Quote(first.Text)} are both called {Quote(word.Says)}", "give one of them another name: cards could not tell them apart");

    public static Diagnostic NoCard(Span span, string card) => new("T007", Severity.Error, span, $"the book has no card {Quote(card)}", "name the file as that of the card which it translates");

    public static Diagnostic BadName(BookWord word, string why) => new("T008", Severity.Error, word.Span, $"{Quote(word.Says)} cannot be a name: {why}", "use words with single spaces; comma, hyphen, point and apostrophe are allowed");

    private static string Quote(string text)
    {
        string line = text.ReplaceLineEndings(" ");
        return line.Length <= Shown ? $"`{line}`" : $"`{line[..Shown]}…`";
    }
}
