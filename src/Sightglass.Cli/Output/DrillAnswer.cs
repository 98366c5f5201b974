using Sightglass.Training.Drills;
using Sightglass.World.Situations;

namespace Sightglass.Cli.Output;

/// <summary>What <c>drill NAME --card CARD --json</c> answers.</summary>
/// <param name="RoadNumber">Of the machine of the case; null for a book without.</param>
/// <param name="Rules">Version of the rules of evaluation.</param>
/// <param name="KnownAtS">When the trainee could know what there was to do; null: never.</param>
/// <param name="Hash">Of the trajectory.</param>
internal sealed record DrillAnswer(
    string Book,
    string Notice,
    string Drill,
    string? RoadNumber,
    ulong Seed,
    ulong Case,
    bool IsPassed,
    double Points,
    double MostPoints,
    double NeededPoints,
    int Rules,
    double? KnownAtS,
    double? EndedAtS,
    IReadOnlyList<DrillAnswer.Line> Lines,
    IReadOnlyList<DrillAnswer.Event> Story,
    string? Trouble,
    long Steps,
    string Hash,
    string Build)
{
    public static DrillAnswer Of(BoundDrill drill, CaseDraws draws, DrillResult result) => new(
        drill.Plan.Book.Title,
        drill.Plan.Book.Notice,
        drill.Drill.Name,
        drill.Plan.Book.RoadNumberInUse,
        draws.Seed,
        draws.Case,
        result.IsPassed,
        result.Sheet.Points,
        result.Sheet.MostPoints,
        result.Sheet.NeededPoints,
        result.Sheet.Rules,
        result.Sheet.KnownAt?.Seconds,
        result.Sheet.EndedAt?.Seconds,
        [.. result.Sheet.Lines.Select(l => new Line(l.Layer.ToString(), l.Said, l.IsMet, l.IsCritical, l.Worth, l.Shown, l.At?.Seconds, l.Because))],
        [.. result.Journal.Select(j => new Event(j.Time.Seconds, j.Text))],
        result.Trouble,
        result.Steps,
        $"{result.Hash:x16}",
        BuildName.Text);

    /// <param name="Layer">Forbidden, Authority, Order, Result, Told or Help.</param>
    internal sealed record Line(string Layer, string What, bool IsMet, bool IsCritical, double Worth, string Evidence, double? AtS, string Because);

    internal sealed record Event(double AtS, string Text);
}
