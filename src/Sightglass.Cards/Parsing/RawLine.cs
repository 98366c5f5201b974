namespace Sightglass.Cards.Parsing;

/// <summary>A line, or several where it was wrapped, by offsets into the source.</summary>
/// <param name="Start">Where the first line starts.</param>
/// <param name="End">Where the last line's text ends.</param>
/// <param name="BodyStart">After the step's number or the list's mark.</param>
internal sealed record RawLine(LineKind Kind, int Start, int End, int BodyStart, int Number = 0);
