using System.Collections.Immutable;
using System.CommandLine;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Time;
using Sightglass.Book;
using Sightglass.Book.Model;
using Sightglass.Book.Recordings;
using Sightglass.Cards;
using Sightglass.Cli.Books;
using Sightglass.Cli.Output;
using Sightglass.Drawing.Svg;
using Sightglass.Paper.Reports;
using Sightglass.Plant.Plans;
using Sightglass.Training.Drills;
using Sightglass.Trials.Recordings;
using Sightglass.World.Runs;
using Sightglass.World.Situations;

namespace Sightglass.Cli.Verbs;

/// <summary><c>recording</c>: what stood on a machine over time: a first mapping of a file, how far its states explain it, a drill that starts from it.</summary>
internal sealed class RecordingVerb : BookVerb
{
    private readonly Argument<string?> _recording = new("RECORDING") { Description = "Name of a recording in the book, or a .csv file that is to become one. Default: list those of the book.", Arity = ArgumentArity.ZeroOrOne };
    private readonly Option<string?> _situation = new("--situation", "-s") { Description = "The situation whose rows are compared. Default: the first that draws from the recording.", HelpName = "SITUATION" };
    private readonly Option<int> _rows = new("--rows") { Description = "How many rows are compared, evenly spread.", DefaultValueFactory = _ => 8 };
    private readonly Option<string> _after = new("--after") { Description = "How long the machine has to settle before it is compared.", HelpName = "TIME", DefaultValueFactory = _ => "2 s" };
    private readonly Option<ulong> _seed = new("--seed") { Description = "Settles what the recording does not tell, with the case.", DefaultValueFactory = _ => 1 };
    private readonly Option<ulong> _case = new("--case") { Description = "By which case that is drawn.", HelpName = "K" };
    private readonly Option<string?> _csv = OutputFile.Option("--csv", "Write the comparison to this file; - for the terminal.", orTerminal: true);
    private readonly Option<string?> _plot = OutputFile.Option("--plot", "Draw it into this SVG file.");
    private readonly Option<Theme> _theme = new("--theme") { Description = "Light in which the plot is shown.", DefaultValueFactory = _ => Theme.Reader };
    private readonly Option<string?> _drill = new("--drill") { Description = "Write the first version of a drill of this title that starts from the recording.", HelpName = "TITLE" };
    private readonly Option<string?> _card = new("--card") { Description = "The card that is to solve the drill (a title or file name in the book).", HelpName = "CARD" };
    private readonly Option<string?> _from = new("--first") { Description = "The first row of the drill's states, as the recording writes its time. Default: its beginning.", HelpName = "WHEN" };
    private readonly Option<string?> _to = new("--last") { Description = "The last row. Default: its end.", HelpName = "WHEN" };
    private readonly Option<string?> _every = new("--every") { Description = "At least so long between two rows.", HelpName = "TIME" };
    private readonly Option<string?> _save = OutputFile.Option("--save", "Write the mapping or the drill to this file, which must not be there yet. Default: to the terminal.");

    public RecordingVerb()
        : base("recording", "What a recorder showed: a first mapping of its file, whether the machine explains it, and a drill that starts from what stood there.")
    {
        Add(_recording);
        Add(BookOption);
        Add(_situation);
        Add(_rows);
        Add(_after);
        Add(_seed);
        Add(_case);
        Add(_csv);
        Add(_plot);
        Add(_theme);
        Add(_drill);
        Add(_card);
        Add(_from);
        Add(_to);
        Add(_every);
        Add(_save);
    }

    public override IReadOnlyList<(string Call, string Says)> Examples =>
    [
        ("recording", "the recordings of the demo"),
        ("recording books/curlew/recordings/stopped-on-the-grade.csv", "what a file holds, and a mapping to fill in"),
        ("recording \"stopped on the grade\"", "whether the machine, started with what was recorded, shows what was recorded beside it"),
        ("recording \"stopped on the grade\" --drill \"hot again\" --card the-engine-runs-hot --first 14:22:00 --every 10s", "the first version of a drill that starts from it"),
    ];

    protected override Task<int> RunAsync(ParseResult line, CancellationToken stop) => Task.Run(() => Answered(line, stop), CancellationToken.None);

    private int Answered(ParseResult line, CancellationToken stop)
    {
        string? name = line.GetValue(_recording);
        if (name is not null && name.EndsWith(".csv", StringComparison.OrdinalIgnoreCase))
        {
            return Stray(line, _csv, _plot, _drill, _situation) is { } stray ? WrongUse(line, $"{stray} goes with a recording of the book, not with a file.").Result : Look(line, name);
        }

        string? named = line.GetValue(BookOption);
        if (BookFolderFinder.Find(named) is not { } folder)
        {
            return NoBook(line, named).Result;
        }

        BookInspection inspection = BookInspection.Read(folder, all: false);
        if (inspection.Book is not { } book)
        {
            return Refuse(line, folder, inspection.Found);
        }

        if (name is null)
        {
            RecordingText.PrintAll(line.InvocationConfiguration.Output, book, line.GetValue(Json));
            return ExitCode.Good;
        }

        if (!book.Recordings.TryGetValue(name, out Recording? recording))
        {
            return WrongUse(line, $"The book has no recording `{name}`; {Nearest.DidYouMean(name, book.Recordings.Keys) ?? (book.Recordings.IsEmpty ? "it has none" : $"it has {string.Join("; ", book.Recordings.Keys)}")}").Result;
        }

        if ((line.GetValue(_drill) is null ? Stray(line, _save, _card, _from, _to, _every) : Stray(line, _csv, _plot, _situation)) is { } other)
        {
            return WrongUse(line, line.GetValue(_drill) is null ? $"{other} goes with --drill." : $"{other} does not go with --drill.").Result;
        }

        return line.GetValue(_drill) is { } title ? Draft(line, inspection, recording, title) : Compare(line, inspection, recording, stop);
    }

    private int Look(ParseResult line, string path)
    {
        if (!File.Exists(path))
        {
            return WrongUse(line, $"There is no file `{path}`.").Result;
        }

        DiagnosticList found = [];
        return RecordingLook.At(path, found) is not { } look ? Refuse(line, "", found) : Put(line, look.Mapping(Path.GetFileNameWithoutExtension(path).Replace('_', ' ').Replace('-', ' ')).Source.Text);
    }

    private int Compare(ParseResult line, BookInspection inspection, Recording recording, CancellationToken stop)
    {
        ClassBook book = inspection.Book!;
        if (line.GetValue(_rows) is < 1 or > 10_000)
        {
            return WrongUse(line, "--rows wants 1 to 10,000.").Result;
        }

        DiagnosticList found = [];
        if (RunVerb.Time(line.GetValue(_after), found) is not { } after)
        {
            return Refuse(line, "", found, ExitCode.WrongUse);
        }

        Situation[] drawing = [.. book.Situations.Values.Where(s => s.States?.Recording == recording.Name).OrderBy(s => s.Span)];
        Situation? situation = line.GetValue(_situation) is { } wanted ? Array.Find(drawing, s => s.Name == wanted) : drawing.FirstOrDefault();
        if (situation is null && line.GetValue(_situation) is { } other)
        {
            return WrongUse(line, $"No situation `{other}` draws from `{recording.Name}`; {(drawing.Length == 0 ? "none does yet" : string.Join("; ", drawing.Select(s => s.Name)))}").Result;
        }

        return RecordingReport.Run(inspection.Fleet, recording, situation, line.GetValue(_rows), after, new(line.GetValue(_seed), line.GetValue(_case)), found, null, stop) is { } report
            ? Say(line, report)
            : Refuse(line, inspection.Folder, found);
    }

    private int Say(ParseResult line, RecordingReport report)
    {
        TextWriter output = line.InvocationConfiguration.Output;
        if (line.GetValue(_plot) is { } plot && report.Compared.Length > 0)
        {
            OutputFile.Write(plot, RecordingPlot.Svg(report, SvgOptions.Alone with { Theme = line.GetValue(_theme) }));
        }

        if (line.GetValue(_csv) is { } csv && csv != "-")
        {
            OutputFile.Write(csv, RecordingText.Csv(report));
        }

        if (line.GetValue(_csv) == "-")
        {
            output.Write(RecordingText.Csv(report));
        }
        else if (line.GetValue(Json))
        {
            Answer.Write(output, RecordingAnswer.Of(report));
        }
        else
        {
            RecordingText.Print(output, report);
        }

        return report.Agrees ? ExitCode.Good : ExitCode.No;
    }

    private int Draft(ParseResult line, BookInspection inspection, Recording recording, string title)
    {
        (ClassBook book, TextWriter error) = (inspection.Book!, line.InvocationConfiguration.Error);
        if (BookNames.WhyNot(RecordedDrill.NameOf(title)) is { } why)
        {
            return WrongUse(line, $"`{title}` cannot be the title of a drill: {why}.").Result;
        }

        if (book.Drills.ContainsKey(title) || book.Situations.ContainsKey(RecordedDrill.NameOf(title)))
        {
            return WrongUse(line, $"The book has a drill or a situation of the title `{title}` already.").Result;
        }

        if (line.GetValue(_card) is not { } named)
        {
            return WrongUse(line, "--drill wants --card: a drill is one that a card of the book solves.").Result;
        }

        if (CardSource.Find(named, book, error, translated: false) is not { } text)
        {
            return ExitCode.WrongUse;
        }

        DiagnosticList found = [];
        string card = Path.GetFileNameWithoutExtension(text.Path);
        return RecordedRows.Check(recording, line.GetValue(_from), line.GetValue(_to), line.GetValue(_every), found) is { } states
            && inspection.Fleet.MachineOf(null, recording.Train) is { } plan
            && CardSource.Compile(text, plan, found) is (_, [{ } choice, ..])
            ? Put(line, new RecordedDrill(title, states, card, choice.Program, RecordedDrill.LikeFor(book, recording, card), book).File(_ => false).Source.Text)
            : Refuse(line, inspection.Folder, found);
    }

    /// <summary>Writes to the terminal, or to a file that is not there yet.</summary>
    private int Put(ParseResult line, string text)
    {
        TextWriter output = line.InvocationConfiguration.Output;
        if (line.GetValue(_save) is not { } path)
        {
            output.Write(text);
            return ExitCode.Good;
        }

        if (File.Exists(path))
        {
            return WrongUse(line, $"`{path}` is there already, and nothing is written over it; name a file that is not there yet.").Result;
        }

        OutputFile.To(path, () =>
        {
            using StreamWriter file = new(new FileStream(path, FileMode.CreateNew));
            file.Write(text);
        });
        output.WriteLine($"{path}: written. What says TO DECIDE in it is yours.");
        return ExitCode.Good;
    }

    private static string? Stray(ParseResult line, params ReadOnlySpan<Option> options)
    {
        foreach (Option option in options)
        {
            if (line.GetResult(option) is { Implicit: false })
            {
                return option.Name;
            }
        }

        return null;
    }

    private static int Refuse(ParseResult line, string folder, DiagnosticList found, int exit = ExitCode.No)
    {
        Findings.Print(line.InvocationConfiguration.Error, folder == "." ? "" : folder, found);
        return exit;
    }
}
