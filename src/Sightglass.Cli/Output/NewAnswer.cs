namespace Sightglass.Cli.Output;

/// <summary>What <c>new --json</c> answers.</summary>
internal sealed record NewAnswer(string Book, string Title, IReadOnlyList<string> Files);
