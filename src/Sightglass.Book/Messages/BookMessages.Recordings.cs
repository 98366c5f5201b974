using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Recordings;

namespace Sightglass.Book.Messages;

/// <content>Recordings: what a file of recorded states says, and where it is not understood.</content>
internal static partial class BookMessages
{
    public static Diagnostic NoRecordingFile(Span span, string file) => Error("B110", span, $"there is no file {Quote(file)} in the book's folder", "put the recording there, not a link to it, or write its path from the book's folder");

    public static Diagnostic NotCsv(Span span, string file) => Error("B110", span, $"{Quote(file)} is not a file of comma-separated values", "save the recording as CSV, with `.csv` at the end of its name");

    public static Diagnostic RecordingTooLarge(Span span, string what, int limit) =>
        Error("B110", span, $"{what} is larger than {limit >> 20} MiB", "cut out the stretch that the drill needs; fewer columns or rows do as well");

    public static Diagnostic EmptyRecording(Span span, string what) => Error("B110", span, $"the recording has no {what}", "a line of heads, and a row for each moment below it");

    public static Diagnostic TooManyRows(Span span, int limit) => Error("B110", span, $"the recording has more than {limit} rows", "cut out the stretch that the drill needs");

    public static Diagnostic Flawed(Span span, CsvFlaw flaw) => flaw switch
    {
        CsvFlaw.NotClosed => Error("B112", span, $"this quote is not closed within {CsvScanner.MostCharacters} characters", "close it, or delete it; nothing after it was read"),
        CsvFlaw.AfterQuote => Error("B112", span, "text stands between a closing quote and the next separator", "write a quote within a field twice (`\"\"`); nothing after it was read"),
        CsvFlaw.TooLong => Error("B112", span, $"a field has more than {CsvScanner.MostCharacters} characters", "this is no table of a recorder; nothing after it was read"),
        _ => Error("B112", span, $"a row has more than {CsvScanner.MostFields} fields", "this is no table of a recorder; nothing after it was read"),
    };

    public static Diagnostic TooManyFields(Span span, int fields, int heads, bool comma) =>
        Error("B112", span, $"the row has {fields} fields, the head line {heads}", comma ? "put numbers with a decimal comma in quotes, or separate fields by semicolons" : "put a text with a separator in quotes");

    public static Diagnostic NoColumn(Span span, string head, IReadOnlyCollection<string> heads, string file) =>
        Error("B111", span, $"{Quote(file)} has no column {Quote(head)}", Suggest(head, heads, "it has") ?? $"its head line has {heads.Count} columns, from {Quote(heads.FirstOrDefault() ?? "")} to {Quote(heads.LastOrDefault() ?? "")}; where heads stand on another line, say `heads in line`");

    public static Diagnostic ColumnTwice(Span span, string head) => Error("B111", span, $"the column {Quote(head)} stands there twice", "give each column a head of its own");

    public static Diagnostic NotANumber(Span span, string head, string text, string? fix) => Error("B112", span, $"{Quote(Plain(text))} of the column {Quote(head)} is not a number", fix ?? "write a number, or list what stands for no value under `missing`");

    public static Diagnostic NotAPosition(Span span, string head, string text, IReadOnlyCollection<string> positions) =>
        Error("B112", span, $"{Quote(Plain(text))} of the column {Quote(head)} is no position", Suggest(text, positions, "say under `as` which it is; there are") ?? "say under `as` which position it is");

    public static Diagnostic NotATime(Span span, string head, string text) =>
        Error("B112", span, $"{Quote(Plain(text))} of the column {Quote(head)} is not a time", "a clock time such as `14:02:30`, also after a date, or a number counted in `time unit`; the same in all rows");

    public static Diagnostic MoreFields(Span span, int limit) => Error("B112", span, $"more than {limit} fields of the recording cannot be read; the rest is left out", "mend the mapping or the first ones and check again");

    public static Diagnostic TimeGoesBack(Span span, string text, string before) =>
        Error("B113", span, $"{Quote(Plain(text))} is earlier than {Quote(Plain(before))} in the row before", "put the rows in the order of their times; cut a file with several events into one for each");

    public static Diagnostic NoRows(Span span, string recording, string why) => Error("B114", span, $"no row of {Quote(recording)} can be drawn: {why}", "take another stretch");

    public static Diagnostic TooManyStates(Span span, string recording, int rows, int limit) =>
        Error("B114", span, $"{rows} rows of {Quote(recording)} are more than are drawn from ({limit})", "take a shorter stretch, or a row `every: 10 s`");

    public static Diagnostic NotAMoment(Span span, string key, string text, bool clock) =>
        Error("B114", span, $"`{key}` is {Quote(text)}", clock ? "the recording tells the time by a clock: write `14:02:30`" : "the recording counts time: write it with its unit, such as `90 s`");

    public static Diagnostic NoUnitOfColumn(Span span, string head, string wanted) =>
        Error("B115", span, $"nothing says in which unit {Quote(head)} is", $"add `unit: {wanted}`");

    public static Diagnostic OtherUnit(Span span, string head, string inHead, string unit) =>
        Error("B115", span, $"the head {Quote(head)} says `{inHead}`, not {Quote(unit)}", $"write `unit: {inHead}`, or mend the head in the file");

    public static Diagnostic WrongUnit(Span span, Unit unit, string what, Dimension dimension) =>
        Error("B115", span, $"`{unit.Symbol}` is not a unit of {Quote(what)}", $"write one of {string.Join(", ", UnitTable.SymbolsOf(dimension).Take(6).Select(s => $"`{s}`"))}");

    public static Diagnostic UnitOfWords(Span span, string what, IReadOnlyCollection<string> positions) =>
        Error("B115", span, $"{Quote(what)} has positions and no unit", $"say under `as` which text is which of {string.Join(", ", positions.Take(12).Select(p => $"`{p}`"))}");

    public static Diagnostic SetTwice(Span span, string name, Span first) => Error("B116", span, $"{Quote(name)} is set here and at {first}", "keep one of them");

    public static Diagnostic OtherTrain(Span span, string recording, string? train) => Error(
        "B117", span, train is null ? $"{Quote(recording)} is of the machine alone, not of a train" : $"{Quote(recording)} is of the train {Quote(train)}", "give the situation the `train` of the recording");

    /// <summary>What stands in a file that nobody has looked at: signs that cannot be seen are left out.</summary>
    private static string Plain(string text) => string.Concat(text.Where(c => !char.IsControl(c)));
}
