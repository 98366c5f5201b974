using System.Globalization;
using Sightglass.Book.Model;
using Sightglass.Training.Differences;

namespace Sightglass.Cli.Output;

/// <summary>What <c>differences --json</c> answers.</summary>
/// <param name="Habits">Where people come from a described older habit; the items are then empty.</param>
/// <param name="On">The day for which modifications and defects are told.</param>
internal sealed record DifferencesAnswer(
    string Known,
    string Other,
    string Notice,
    IReadOnlyList<DifferencesAnswer.Row> Items,
    IReadOnlyList<DifferencesAnswer.Line> Habits,
    string On,
    IReadOnlyList<DifferencesAnswer.Status> Modifications,
    IReadOnlyList<DifferencesAnswer.Fault> Defects)
{
    public static DifferencesAnswer Of(ClassBook known, ClassBook other, IEnumerable<ItemDifference> differences, MachineStatus status) =>
        Of(DifferencesText.NameOf(known), other, status) with { Items = [.. differences.Select(d => new Row(d.Item.Name, d.Sort.ToString(), [.. d.Changes.Select(c => new Part(c.What, c.Was, c.Is))], d.Habit))] };

    public static DifferencesAnswer Of(ClassBook book, Habit habit, MachineStatus status) =>
        Of(habit.Name, book, status) with { Habits = [.. habit.Lines.Select(l => new Line(l.Item, l.Was, l.Here, l.Hurts))] };

    private static DifferencesAnswer Of(string known, ClassBook other, MachineStatus status) => new(
        known,
        DifferencesText.NameOf(other),
        other.Notice,
        [],
        [],
        Day(status.Day)!,
        [.. status.Done.Select(m => new Status(m.Name, Day(m.Since), m.Text, Done: true)), .. status.ToCome.Select(m => new Status(m.Name, Day(m.Since), m.Text, Done: false))],
        [.. status.Defects.Select(d => new Fault(d.Item, d.Text, d.Restriction, d.FoundBy, Day(d.FoundOn)!))]);

    private static string? Day(DateOnly? day) => day?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    internal sealed record Row(string Item, string Sort, IReadOnlyList<Part> Changes, string? Habit);

    internal sealed record Part(string What, string Was, string Is);

    internal sealed record Line(string Item, string Was, string Here, string Hurts);

    /// <param name="Done">By that day.</param>
    internal sealed record Status(string Name, string? Since, string Text, bool Done);

    internal sealed record Fault(string? Item, string Text, string Restriction, string FoundBy, string FoundOn);
}
