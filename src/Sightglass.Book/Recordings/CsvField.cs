namespace Sightglass.Book.Recordings;

/// <summary>One field of comma-separated text, by offsets; the quotes round it left out.</summary>
public readonly record struct CsvField(int Start, int End, bool IsQuoted);
