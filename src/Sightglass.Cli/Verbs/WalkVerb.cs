using System.CommandLine;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Cli.Books;
using Sightglass.Cli.Output;
using Sightglass.Drawing.Strip;
using Sightglass.Drawing.Svg;
using Sightglass.Drawing.Walk;

namespace Sightglass.Cli.Verbs;

/// <summary><c>walk</c>: the walk round the machine, as text or as the strip.</summary>
internal sealed class WalkVerb : BookVerb
{
    private readonly Option<string?> _place = new("--place") { Description = "Only what can be met at this place.", HelpName = "PLACE" };
    private readonly Option<string?> _svg = OutputFile.Option("--svg", "Draw the four sides unrolled into this file instead.");
    private readonly Option<Theme> _theme = new("--theme") { Description = "Light in which the drawing is shown.", DefaultValueFactory = _ => Theme.Reader };
    private readonly Option<double> _scale = new("--scale") { Description = "Pixels a metre in the drawing.", DefaultValueFactory = _ => new StripOptions().Scale };

    public WalkVerb()
        : base("walk", "Walk round the machine: places in order, what is met at each, what normal looks like, cautions.")
    {
        Add(Folder);
        Add(RoadNumber);
        Add(_place);
        Add(_svg);
        Add(_theme);
        Add(_scale);
    }

    public override IReadOnlyList<(string Call, string Says)> Examples =>
    [
        ("walk", "the demo machine, place by place"),
        ("walk --place \"fuel panel, right\"", "what is met at one place"),
        ("walk --svg strip.svg --theme print", "the four sides unrolled, to print"),
    ];

    protected override Task<int> RunAsync(ParseResult line, CancellationToken stop)
    {
        string? named = line.GetValue(Folder);
        if (BookFolderFinder.Find(named) is not { } folder)
        {
            return NoBook(line, named);
        }

        BookInspection inspection = BookInspection.Read(folder, all: false);
        if (inspection.Book is not { } book)
        {
            Findings.Print(line.InvocationConfiguration.Error, folder, inspection.Found);
            return Task.FromResult(ExitCode.No);
        }

        string? number = line.GetValue(RoadNumber);
        return HasRoadNumber(line, inspection, number) ? Walk(line, number is null ? book : book.For(number)) : Task.FromResult(ExitCode.WrongUse);
    }

    private Task<int> Walk(ParseResult line, ClassBook book)
    {
        TextWriter output = line.InvocationConfiguration.Output;
        WalkRoute route = WalkRoute.Of(book);
        string? place = line.GetValue(_place);
        if (place is not null && route.Find(place) is null)
        {
            string? hint = Nearest.DidYouMean(place, book.Places.Keys);
            return WrongUse(line, $"The book has no place `{place}`{(hint is null ? "" : $"; {hint}")}");
        }

        if (line.GetValue(_svg) is { } file)
        {
            StripOptions options = new() { CurrentPlace = place, Scale = line.GetValue(_scale), Interactive = false };
            OutputFile.Write(file, StripDrawing.Render(book, options, SvgOptions.Alone with { Theme = line.GetValue(_theme) }));
            if (line.GetValue(Json))
            {
                Answer.Write(output, new DrawnAnswer(file.Replace('\\', '/')));
            }
            else
            {
                output.WriteLine($"Drawn: {file}");
            }

            return Task.FromResult(ExitCode.Good);
        }

        IEnumerable<WalkStop> stops = place is null ? route.Stops : [route.Find(place)!];
        if (line.GetValue(Json))
        {
            Answer.Write(output, WalkAnswer.Of(book, stops));
        }
        else
        {
            WalkText.Print(output, book, stops);
        }

        return Task.FromResult(ExitCode.Good);
    }
}
