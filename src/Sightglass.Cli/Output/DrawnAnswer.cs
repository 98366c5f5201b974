namespace Sightglass.Cli.Output;

/// <summary>What <c>walk --svg FILE --json</c> answers.</summary>
internal sealed record DrawnAnswer(string Svg);
