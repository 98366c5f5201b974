using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Messages;

/// <content>Folders, files and YAML as text.</content>
internal static partial class BookMessages
{
    public static Diagnostic NoFolder(string folder) => Error("B001", Span.None, $"there is no folder {Quote(folder)}", "name the folder that holds the book's .yaml files");

    public static Diagnostic NoFiles() => Error("B002", Span.None, "the book has no .yaml file", "`new NAME` writes one to start from");

    public static Diagnostic TooLarge(Span span, string what, int limit) => Error("B003", span, $"{what} is larger than {limit >> 20} MiB", "books are text; keep pictures and data elsewhere");

    public static Diagnostic NotUtf8(Span span, string what) => Error("B004", span, what, "save the file as UTF-8");

    public static Diagnostic Link(Span span) => Error("B005", span, "this is a link to somewhere else", "put the file itself into the book's folder");

    public static Diagnostic TooManyFiles(Span span, int limit) => Error("B006", span, $"the folder holds more than {limit} files and folders", "name the folder of one book");

    public static Diagnostic FoldersTooDeep(Span span, int limit) => Error("B006", span, $"folders are nested deeper than {limit}", "name the folder of one book");

    public static Diagnostic Unreadable(Span span, string why) => Error("B007", span, $"cannot be read: {why.TrimEnd('.')}");

    public static Diagnostic Syntax(Span span, string message, string fix) => Error("B010", span, message, fix);

    public static Diagnostic NotClosed(Span span, string message, string fix) => Error("B011", span, message, fix);

    public static Diagnostic Tab(Span span) => Error("B012", span, "a tab stands in the indentation", "indent with spaces");

    public static Diagnostic Control(Span span, char c) => Error("B013", span, $"an invisible character (U+{(int)c:X4}) stands here", "delete it");

    public static Diagnostic TooDeep(Span span, int limit) => Error("B014", span, $"lists and maps are nested deeper than {limit}", "a book needs five levels");

    public static Diagnostic TooManyNodes(Span span, int limit) => Error("B015", span, $"the book has more than {limit} keys and values", "nothing after this place was read");

    public static Diagnostic Alias(Span span) => Error("B016", span, "anchors (`&`) and references to them (`*`) are not used in books", "write the value out, or put quotes round the text");

    public static Diagnostic Tag(Span span, string tag) => Error("B017", span, $"type marks such as {Quote(tag)} are not used in books", "write the value alone, or put quotes round the text");

    public static Diagnostic KeyNotText(Span span) => Error("B018", span, "a key must be a text", "put quotes round a name that begins with a bracket");

    public static Diagnostic DuplicateKey(Span span, string key, Span first) => Error("B019", span, $"{Quote(key)} stands here a second time; the first is at {first}", "keep one of them");

    public static Diagnostic TooManyRoadNumbers(Span span, int numbers, int items, int limit) =>
        Error("B021", span, $"{numbers} road numbers with modifications of {items} items are more than can be checked ({limit} items in all)", "split the class into several books");

    public static Diagnostic MoreFindings(Span span, int limit) => Error("B020", span, $"there are more than {limit} findings; the rest is left out", "mend the first ones and check again");
}
