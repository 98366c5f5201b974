namespace Sightglass.Tests.Support;

/// <summary>A text with one token changed, and where.</summary>
/// <param name="Line">Line of the change, from 1.</param>
/// <param name="LastLine">Last line of the change.</param>
internal sealed record Mutant(string Text, int Line, int LastLine, string What);
