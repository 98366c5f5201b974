namespace Sightglass.Cli.Output;

/// <summary>A drawn value as people read it.</summary>
internal sealed record ValueRow(string Name, string Value);
