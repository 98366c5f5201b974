using System.CommandLine;
using System.Globalization;
using Sightglass.Book.Model;
using Sightglass.Cli.Books;
using Sightglass.Cli.Data;
using Sightglass.Cli.Output;
using Sightglass.Cli.Routes;
using Sightglass.Training.Differences;

namespace Sightglass.Cli.Verbs;

/// <summary><c>differences</c>: what is not as people know it.</summary>
internal sealed class DifferencesVerb : BookVerb
{
    private readonly Option<string?> _from = new("--from") { Description = "Folder of the class book that the people know. Default: the same book.", HelpName = "FOLDER" };
    private readonly Option<string?> _fromNumber = new("--from-number") { Description = "The machine of that class that they know. Default: the class as described.", HelpName = "NUMBER" };

    private readonly Option<string?> _habit = new("--habit") { Description = "What the people bring with them from older machines that no book describes; a name of the book's `habits`.", HelpName = "NAME" };
    private readonly Option<string?> _on = new("--on") { Description = "The day for which modifications and open defects of a road number are told. Default: today.", HelpName = "DAY" };
    private readonly Option<string?> _data = DataOption.Create();

    public DifferencesVerb()
        : base("differences", "What is new, gone, moved, works or shows otherwise, for people who know another machine, road number or edition, and the habit that now hurts.")
    {
        Add(BookOption);
        Add(RoadNumber);
        Add(_from);
        Add(_fromNumber);
        Add(_habit);
        Add(_on);
        Add(_data);
    }

    public override IReadOnlyList<(string Call, string Says)> Examples =>
    [
        ("differences --road-number 4104", "what differs on one machine of the class"),
        ("differences --road-number 4112 --from-number 4107", "between two machines of the class"),
        ("differences --book books/curlew --from books/smallest", "between two classes"),
        ("differences --habit \"one tank, one cock\"", "for people who come from older machines that no book describes"),
    ];

    protected override Task<int> RunAsync(ParseResult line, CancellationToken stop)
    {
        if (Open(line, out int exit) is not { } other || Known(line, out exit) is not { } known)
        {
            return Task.FromResult(exit);
        }

        if (Day(line) is not { } day)
        {
            return WrongUse(line, "--on wants a day: 2026-12-31.");
        }

        if (line.GetValue(_habit) is { } named && !other.Habits.ContainsKey(named))
        {
            return WrongUse(line, RouteOptions.Unknown("habit", named, other.Habits.Keys));
        }

        Tell(line, known, other, MachineStatus.Of(other, day, KeptDefects.Of(line.GetValue(_data), FolderOf(line), other, line.InvocationConfiguration.Error)));
        return Task.FromResult(ExitCode.Good);
    }

    private void Tell(ParseResult line, ClassBook known, ClassBook other, MachineStatus status)
    {
        TextWriter output = line.InvocationConfiguration.Output;
        Habit? habit = line.GetValue(_habit) is { } named ? other.Habits[named] : null;
        ItemDifference[] differences = habit is null ? [.. MachineComparison.Of(known, other)] : [];
        if (line.GetValue(Json))
        {
            Answer.Write(output, habit is null ? DifferencesAnswer.Of(known, other, differences, status) : DifferencesAnswer.Of(other, habit, status));
        }
        else if (habit is null)
        {
            DifferencesText.Print(output, known, other, differences, status);
        }
        else
        {
            DifferencesText.Print(output, other, habit, status);
        }
    }

    private DateOnly? Day(ParseResult line) => line.GetValue(_on) is not { } written ? DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().Date)
        : DateOnly.TryParseExact(written, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day) ? day : null;

    private ClassBook? Known(ParseResult line, out int exit) => KnownMachine.Read(line, line.GetValue(_from) ?? line.GetValue(BookOption), line.GetValue(_fromNumber), out exit);
}
