using System.CommandLine;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Language;
using Sightglass.Book.Model;
using Sightglass.Cards;
using Sightglass.Cards.Format;
using Sightglass.Cards.Tree;
using Sightglass.Cli.Books;
using Sightglass.Cli.Output;

namespace Sightglass.Cli.Verbs;

/// <summary><c>format</c>: cards in the one way they are written.</summary>
internal sealed class FormatVerb : BookVerb
{
    private readonly Argument<string[]> _cards = new("CARD")
    {
        Description = "Files, or folders whose *.card files are meant. Default: every card of the book.",
        Arity = ArgumentArity.ZeroOrMore,
    };

    private readonly Option<bool> _check = new("--check") { Description = "Write nothing; the answer is 'no' where a card would change." };

    public FormatVerb()
        : base("format", "Write cards in the one way they are written: spaces, numbered steps, capitals, full stops. Comments stay.")
    {
        Add(_cards);
        Add(BookOption);
        Add(_check);
    }

    public override IReadOnlyList<(string Call, string Says)> Examples =>
    [
        ("format --check", "whether every card of the demo is in form"),
        ("format books/curlew/cards", "all cards of a folder, in place"),
    ];

    protected override Task<int> RunAsync(ParseResult line, CancellationToken stop)
    {
        string[] named = line.GetValue(_cards) ?? [];
        string? book = line.GetValue(BookOption);
        if (BookFolderFinder.Find(book, named.FirstOrDefault()) is not { } folder)
        {
            return NoBook(line, book);
        }

        BookInspection inspection = BookInspection.Read(folder, all: false);
        if (inspection.Book is null)
        {
            Findings.Print(line.InvocationConfiguration.Error, folder, inspection.Found);
            return Task.FromResult(ExitCode.No);
        }

        if (named.FirstOrDefault(n => !File.Exists(n) && !Directory.Exists(n)) is { } missing)
        {
            return WrongUse(line, $"There is no file or folder `{missing}`.");
        }

        IEnumerable<string> files = (named.Length == 0 ? [folder] : named)
            .SelectMany(n => Directory.Exists(n) ? Directory.EnumerateFiles(n, "*.card", SearchOption.AllDirectories).Where(f => !IsTranslation(n, f)) : [n])
            .Order(StringComparer.Ordinal);
        // A translation that is named speaks in the names of its language.
        ClassBook said = named.Length == 0 ? inspection.Book : WordsReader.Into(inspection.Book, folder, []);
        return Task.FromResult(Format(line, said, [.. files]));
    }

    private int Format(ParseResult line, ClassBook book, string[] files)
    {
        bool only = line.GetValue(_check);
        List<string> changed = [];
        DiagnosticList found = [];
        foreach (string file in files)
        {
            SourceText text = new(file.Replace('\\', '/'), File.ReadAllText(file));
            if (CardReader.Read(text, book.For(text), found) is not { } card || card.Elements.OfType<CardElement.Unread>().Any())
            {
                continue;
            }

            string formatted = CardFormat.Format(card);
            if (formatted != text.Text)
            {
                changed.Add(text.Path);
                if (!only)
                {
                    OutputFile.Write(file, formatted);
                }
            }
        }

        TextWriter output = line.InvocationConfiguration.Output;
        if (line.GetValue(Json))
        {
            Answer.Write(output, new FormatAnswer(files.Length, changed, [.. found.Where(d => d.Severity == Severity.Error).Select(FindingRow.Of)]));
        }
        else
        {
            Findings.Print(output, "", found.Where(d => d.Severity == Severity.Error));
            changed.ForEach(c => output.WriteLine(only ? $"{c}: not in form" : $"{c}: written"));
            output.WriteLine($"{Findings.Many(files.Length, "card")}, {(changed.Count == 0 ? "none" : changed.Count)} {(only ? "to be changed" : "changed")}");
        }

        return found.HasErrors || (only && changed.Count > 0) ? ExitCode.No : ExitCode.Good;
    }

    /// <summary>Cards in other languages, below a book's folder, are written as their translator wants them: what they do is checked, not their form.</summary>
    private static bool IsTranslation(string folder, string file) => Path.GetRelativePath(folder, file).StartsWith(WordsReader.Folder + Path.DirectorySeparatorChar, StringComparison.Ordinal);
}
