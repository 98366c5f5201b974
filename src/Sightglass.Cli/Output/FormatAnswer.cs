namespace Sightglass.Cli.Output;

/// <summary>What <c>format --json</c> answers: cards with errors are left as they are.</summary>
internal sealed record FormatAnswer(int Cards, IReadOnlyList<string> Changed, IReadOnlyList<FindingRow> Findings);
