using Sightglass.Book.Model;
using Sightglass.Training.Differences;

namespace Sightglass.Cli.Output;

/// <summary>What <c>differences --json</c> answers.</summary>
internal sealed record DifferencesAnswer(string Known, string Other, string Notice, IReadOnlyList<DifferencesAnswer.Row> Items, IReadOnlyList<DifferencesAnswer.Status> Modifications)
{
    public static DifferencesAnswer Of(ClassBook known, ClassBook other, IEnumerable<ItemDifference> differences) => new(
        DifferencesText.NameOf(known),
        DifferencesText.NameOf(other),
        other.Notice,
        [.. differences.Select(d => new Row(d.Item.Name, d.Sort.ToString(), [.. d.Changes.Select(c => new Part(c.What, c.Was, c.Is))], d.Habit))],
        [.. DifferencesText.ModificationsOf(other).Select(m => new Status(m.Name, m.Since?.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture), m.Text))]);

    internal sealed record Row(string Item, string Sort, IReadOnlyList<Part> Changes, string? Habit);

    internal sealed record Part(string What, string Was, string Is);

    internal sealed record Status(string Name, string? Since, string Text);
}
