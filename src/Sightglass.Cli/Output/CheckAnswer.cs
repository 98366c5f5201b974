using Sightglass.Basics.Diagnostics;
using Sightglass.Cli.Books;

namespace Sightglass.Cli.Output;

/// <summary>What <c>check --json</c> answers.</summary>
internal sealed record CheckAnswer(
    string Book, string? Title, bool Good, int Errors, int Warnings, int? Items, int? Places, int? Situations, int? Cards, string Build, IReadOnlyList<FindingRow> Findings)
{
    public static CheckAnswer Of(BookInspection i) => new(
        i.Folder.Replace('\\', '/'),
        i.Book?.Title,
        !i.Found.HasErrors,
        i.Found.Count(d => d.Severity == Severity.Error),
        i.Found.Count(d => d.Severity == Severity.Warning),
        i.Book?.Items.Count,
        i.Book?.Places.Count,
        i.Book?.Situations.Count,
        i.Book is null ? null : i.Cards.Length,
        BuildName.Text,
        [.. i.Found.Select(FindingRow.Of)]);
}
