namespace Sightglass.Cli.Output;

/// <summary>What <c>walkdown --html FILE --json</c> answers.</summary>
internal sealed record WalkDownAnswer(string Html, string Book, string? RoadNumber, string Purpose, int Places, int Items);
