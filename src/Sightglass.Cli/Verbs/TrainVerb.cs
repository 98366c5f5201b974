using System.CommandLine;
using System.Globalization;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Consists;
using Sightglass.Book.Model;
using Sightglass.Cli.Books;
using Sightglass.Cli.Output;
using Sightglass.Paper.Document;
using Sightglass.Paper.Html;
using Sightglass.Paper.Papers;
using Sightglass.Paper.Pdf;
using Sightglass.Trials.Consists;

namespace Sightglass.Cli.Verbs;

/// <summary><c>train</c>: a train on one sheet before it is coupled.</summary>
internal sealed class TrainVerb : BookVerb
{
    /// <summary>Bytes of a file that somebody types.</summary>
    private const int Largest = 1 << 20;

    private readonly Argument<string?> _train = new("TRAIN") { Description = "A file that lists vehicles, or the name of a train of the book. Default: the book's trains.", Arity = ArgumentArity.ZeroOrOne };
    private readonly Option<double?> _grade = new("--grade") { Description = "The steepest grade of its way, upward, in per cent. Default: that of the file, else the level.", HelpName = "PERCENT" };
    private readonly Option<double?> _adhesion = new("--adhesion") { Description = "What the rail holds of the weight on driven axles, in per cent. Default: that of the file, else 20.", HelpName = "PERCENT" };
    private readonly Option<string?> _pdf = OutputFile.Option("--pdf", "Write the sheet as tagged PDF into this file.");
    private readonly Option<string?> _html = OutputFile.Option("--html", "Write the sheet as a page that stands alone into this file.");
    private readonly Option<string?> _size = new("--size") { Description = "The sheet of --pdf and --html: letter, a4, tabloid, a3, a2.", HelpName = "SHEET" };

    public TrainVerb()
        : base("train", "A train on one sheet: what is coupled where, in which order and under which protection, what cannot be, power and voltage along it, how many brakes work, tonnage and grade, which machine answers, and whether it is fit to leave.")
    {
        Add(_train);
        Add(BookOption);
        Add(RoadNumber);
        foreach (Option option in new Option[] { _grade, _adhesion, _pdf, _html, _size })
        {
            Add(option);
        }
    }

    public override IReadOnlyList<(string Call, string Says)> Examples =>
    [
        ("train", "the trains of the book"),
        ("train \"night mail\" --grade 1.5", "one of them, up a grade of 1.5 %"),
        ("train docs/guide/a-train.yaml", "a train as somebody made it up; exit code 1 where it is not fit to leave"),
        ("train docs/guide/a-train.yaml --pdf train.pdf", "the same on a sheet to take along"),
    ];

    protected override Task<int> RunAsync(ParseResult line, CancellationToken stop) => Task.Run(() => Run(line, stop), CancellationToken.None);

    private int Run(ParseResult line, CancellationToken stop)
    {
        if (Open(line, out int exit) is not { } book)
        {
            return exit;
        }

        TextWriter output = line.InvocationConfiguration.Output, error = line.InvocationConfiguration.Error;
        if (line.GetValue(_train) is not { } named)
        {
            TrainText.List(output, book, line.GetValue(Json));
            return ExitCode.Good;
        }

        PaperSheet? sheet = line.GetValue(_size) is { } size ? PaperSheet.Find(size) : PaperSheet.Letter;
        if (sheet is null || !sheet.Fits(PaperLook.Sheet))
        {
            error.WriteLine($"`{line.GetValue(_size)}` is no sheet for this paper; it is printed on {string.Join(", ", PaperSheet.All.Where(s => s.Fits(PaperLook.Sheet)).Select(s => s.Name))}");
            return ExitCode.WrongUse;
        }

        if (Wrong("--grade", line.GetValue(_grade), 0, 10) is { } grade)
        {
            error.WriteLine(grade);
            return ExitCode.WrongUse;
        }

        if (Wrong("--adhesion", line.GetValue(_adhesion), 1, 50) is { } adhesion)
        {
            error.WriteLine(adhesion);
            return ExitCode.WrongUse;
        }

        if (Find(named, book, error) is not { } consist)
        {
            return ExitCode.WrongUse;
        }

        consist = consist with { Grade = line.GetValue(_grade) / 100 ?? consist.Grade, Adhesion = line.GetValue(_adhesion) / 100 ?? consist.Adhesion };
        TrainCheckResult result = TrainCheck.Of(book, consist, stop);
        Save(line, result, sheet);
        if (line.GetValue(Json))
        {
            Answer.Write(output, TrainAnswer.Of(result));
        }
        else
        {
            TrainText.Print(output, result);
        }

        return result.Verdict == FindingWeight.Stops ? ExitCode.No : ExitCode.Good;
    }

    private static string? Wrong(string option, double? given, double least, double most) =>
        given is not { } value || (value >= least && value <= most) ? null : string.Create(CultureInfo.InvariantCulture, $"{option} is {value}; it can be {least} to {most}, in per cent");

    /// <summary>A train of the book by its name, or what a file lists; null after saying what is wrong.</summary>
    private static Consist? Find(string named, ClassBook book, TextWriter error)
    {
        if (!File.Exists(named))
        {
            if (book.Trains.TryGetValue(named, out Train? train))
            {
                return Consist.Of(train);
            }

            error.WriteLine($"There is no file and no train `{named}`; {Nearest.DidYouMean(named, book.Trains.Keys) ?? (book.Trains.IsEmpty ? "the book lists none" : $"the book has: {string.Join("; ", book.Trains.Keys)}")}");
            return null;
        }

        if (TextOf(named, error) is not { } text)
        {
            return null;
        }

        DiagnosticList found = [];
        Consist? consist = ConsistReader.Read(new SourceText(named.Replace('\\', '/'), text), book, found);
        Findings.Print(error, "", found);
        return consist;
    }

    private static string? TextOf(string file, TextWriter error)
    {
        try
        {
            if (new FileInfo(file).Length > Largest)
            {
                error.WriteLine($"`{file}` is larger than 1 MiB; a train is a list of vehicles, see docs/guide/a-train.md");
                return null;
            }

            return new System.Text.UTF8Encoding(false, throwOnInvalidBytes: true).GetString(File.ReadAllBytes(file)).TrimStart('\uFEFF');
        }
        catch (ArgumentException)
        {
            error.WriteLine($"`{file}` is not UTF-8; save it as UTF-8");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            error.WriteLine($"`{file}` cannot be read: {e.Message}");
        }

        return null;
    }

    private void Save(ParseResult line, TrainCheckResult result, PaperSheet sheet)
    {
        if (line.GetValue(_pdf) is null && line.GetValue(_html) is null)
        {
            return;
        }

        PaperDocument paper = TrainPaper.Of(result) with { Printed = PaperVerb.Today };
        if (line.GetValue(_pdf) is { } pdf)
        {
            OutputFile.Write(pdf, PdfPaper.Write(paper, sheet).Bytes);
        }

        if (line.GetValue(_html) is { } html)
        {
            OutputFile.Write(html, HtmlPage.Write(paper, sheet));
        }
    }
}
