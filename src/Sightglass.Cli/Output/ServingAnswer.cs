namespace Sightglass.Cli.Output;

/// <summary>What <c>serve --json</c> and <c>start --json</c> answer once the pages are there.</summary>
internal sealed record ServingAnswer(string Address, string Book, string Build);
