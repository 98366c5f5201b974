namespace Sightglass.Cli.Output;

/// <summary>What <c>try --case K --json</c> answers: that case of each situation.</summary>
internal sealed record CasesAnswer(string Build, IReadOnlyList<CaseAnswer> Cases);
