using Sightglass.Cli.Runs;

namespace Sightglass.Cli.Rules;

/// <summary>Sets of rules held against one machine.</summary>
/// <param name="Book">Title of the book.</param>
/// <param name="RoadNumber">Whose modifications apply, or null.</param>
/// <param name="Sets">Each set with its findings.</param>
/// <param name="Run">The run in which tests were measured, or null.</param>
internal sealed record RuleResult(string Book, string? RoadNumber, IReadOnlyList<RuleSetResult> Sets, RunResult? Run);
