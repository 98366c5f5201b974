using Sightglass.Book.Model;

namespace Sightglass.Cli.Output;

/// <summary>What <c>drill --json</c> answers.</summary>
internal sealed record DrillListAnswer(string Book, string Notice, IReadOnlyList<DrillListAnswer.Row> Drills)
{
    public static Row RowOf(Drill d) => new(
        d.Name, d.Level.ToString(), d.IsQualifying, d.Aim, d.Role, d.Situation, d.TimeLimit, d.Tools, d.WithCards, d.NotReal, d.StopWord, [.. d.Objectives.Select(o => o.Name)], [.. d.MustNever.Select(n => n.Name)], d.SolvedBy);

    /// <param name="Level">FirstDay, Working or Qualifying.</param>
    /// <param name="TimeLimitS">Seconds.</param>
    internal sealed record Row(
        string Drill, string Level, bool IsQualifying, string Aim, string Role, string Situation, double TimeLimitS, IReadOnlyList<string> Tools, bool WithCards, IReadOnlyList<string> NotReal, string StopWord,
        IReadOnlyList<string> Objectives, IReadOnlyList<string> MustNever, IReadOnlyList<string> SolvedBy);
}
