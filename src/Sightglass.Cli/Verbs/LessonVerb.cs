using System.CommandLine;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Cli.Books;
using Sightglass.Cli.Data;
using Sightglass.Cli.Output;
using Sightglass.Cli.Routes;
using Sightglass.Paper.Html;
using Sightglass.Paper.Papers;
using Sightglass.Training.Lessons;

namespace Sightglass.Cli.Verbs;

/// <summary><c>lesson</c>: a lesson round the machine, planned from the book.</summary>
internal sealed class LessonVerb : BookVerb
{
    private readonly RouteOptions _route = new();
    private readonly Option<int> _people = new("--people") { Description = "How many are taught.", HelpName = "N", DefaultValueFactory = _ => 10 };
    private readonly Option<int> _stations = new("--stations") { Description = "At so many stations somebody speaks, and as many groups go round.", HelpName = "N", DefaultValueFactory = _ => 1 };
    private readonly Option<double?> _minutes = new("--minutes") { Description = "How long there is: says what does not fit.", HelpName = "N" };
    private readonly Option<int> _words = new("--words") { Description = "Words a minute that whoever teaches speaks, with pointing.", HelpName = "N", DefaultValueFactory = _ => LessonTimes.Slowly };
    private readonly Option<Depth> _depth = new("--depth") { Description = "How deep: know, operate, repair.", DefaultValueFactory = _ => Depth.Operate };
    private readonly Option<string?> _audience = new("--audience") { Description = "The role of those who are taught: what it may operate, hands may try. Default: that of --role.", HelpName = "ROLE" };
    private readonly Option<string?> _html = OutputFile.Option("--html", "Write the lesson, with its pictures, as a page to print into this file instead.");
    private readonly Option<string?> _vtt = OutputFile.Option("--vtt", "Write what is said as captions (WebVTT) into this file.");
    private readonly Option<string?> _data = DataOption.Create();

    public LessonVerb()
        : base("lesson", "A lesson round the machine: what to say at each stop, questions, hands, stations, protection to arrange, what to bring, and the time it takes.")
    {
        Add(_route.Purpose);
        Add(BookOption);
        Add(RoadNumber);
        foreach (Option option in new Option[] { _people, _stations, _minutes, _words, _depth, _audience, _html, _vtt, _data }.Concat(_route.All))
        {
            Add(option);
        }
    }

    public override IReadOnlyList<(string Call, string Says)> Examples =>
    [
        ("lesson \"fuel for a crew\" --people 10 --stations 3 --minutes 120", "two hours for ten people, in three groups"),
        ("lesson \"first look\" --depth know --html lesson.html", "once round for beginners, as a page to print"),
    ];

    protected override Task<int> RunAsync(ParseResult line, CancellationToken stop)
    {
        if (Open(line, out int exit) is not { } book)
        {
            return Task.FromResult(exit);
        }

        if (line.GetValue(_people) < 1 || line.GetValue(_stations) < 1 || line.GetValue(_minutes) is <= 0 || line.GetValue(_words) < 1)
        {
            return WrongUse(line, "--people, --stations and --words are 1 or more, --minutes more than 0");
        }

        if (_route.Read(line, book) is not var (request, spoken))
        {
            return Task.FromResult(ExitCode.WrongUse);
        }

        string? audience = line.GetValue(_audience) ?? request.Role;
        if (audience is not null && !spoken.Roles.ContainsKey(audience))
        {
            return WrongUse(line, RouteOptions.Unknown("role", audience, spoken.Roles.Keys));
        }

        LessonRequest lesson = new(request, line.GetValue(_people), line.GetValue(_depth))
        {
            Minutes = line.GetValue(_minutes),
            Times = new() { WordsAMinute = line.GetValue(_words) },
            Stations = line.GetValue(_stations),
            Audience = audience,
            Kit = book.Walks.TryGetValue(line.GetValue(_route.Purpose)!, out PlannedWalk? walk) ? walk.Kit : [],
        };
        return LessonPlanner.Plan(spoken, lesson) is { } plan ? Tell(line, plan) : RouteVerb.NoWalk(line);
    }

    private Task<int> Tell(ParseResult line, LessonPlan plan)
    {
        TextWriter output = line.InvocationConfiguration.Output;
        if (line.GetValue(_html) is { } file)
        {
            OutputFile.Write(file, HtmlPage.Write(LessonPaper.Of(plan, album: KeptPhotos.Album(line.GetValue(_data), FolderOf(line), plan.Route.Book, line.InvocationConfiguration.Error))));
        }

        if (line.GetValue(_vtt) is { } captions)
        {
            OutputFile.Write(captions, WebVtt.Write(Narration.Of(plan)));
        }

        if (line.GetValue(Json))
        {
            Answer.Write(output, LessonAnswer.Of(plan));
        }
        else if (new[] { line.GetValue(_html), line.GetValue(_vtt) }.OfType<string>().ToArray() is { Length: > 0 } written)
        {
            output.WriteLine($"Written: {string.Join(", ", written)}. {LessonWords.Summary(plan)}");
        }
        else
        {
            LessonText.Print(output, plan);
        }

        return Task.FromResult(ExitCode.Good);
    }
}
