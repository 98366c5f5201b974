using Sightglass.Book.Model;
using Sightglass.Training.Drills;

namespace Sightglass.Cli.Output;

/// <summary>What <c>drill --check --json</c> answers.</summary>
internal sealed record DrillCheckAnswer(string Book, string Notice, bool IsGood, IReadOnlyList<DrillCheckAnswer.Row> Drills, string Build)
{
    public static DrillCheckAnswer Of(ClassBook book, IReadOnlyList<(Drill Drill, DrillCheckResult Result)> results) => new(
        book.Title,
        book.Notice,
        results.All(r => r.Result.IsGood),
        [.. results.Select(r => new Row(
            r.Drill.Name,
            r.Result.IsGood,
            r.Result.Cases,
            [.. r.Result.Solutions.Select(s => new Solution(s.Card, s.Passed))],
            r.Result.Unsolved,
            r.Result.Idle,
            [.. r.Result.Shortcuts.Select(s => new Shortcut(s.Card, s.Step, s.Text))]))],
        BuildName.Text);

    /// <param name="Unsolved">Cases that no card passes.</param>
    /// <param name="Idle">Cases that are passed although nobody does anything.</param>
    internal sealed record Row(string Drill, bool IsGood, int Cases, IReadOnlyList<Solution> Solutions, IReadOnlyList<int> Unsolved, IReadOnlyList<int> Idle, IReadOnlyList<Shortcut> Shortcuts);

    internal sealed record Solution(string Card, int Passed);

    internal sealed record Shortcut(string Card, int Step, string Text);
}
