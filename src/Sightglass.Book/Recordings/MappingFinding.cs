using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Recordings;

/// <summary>What is wrong with a mapping, and where in it.</summary>
/// <param name="Head">The column that it is about; null for the recording as a whole.</param>
/// <param name="Key">The key of the column or of the recording; empty for a field of the file, or where no key is meant.</param>
/// <param name="Found">What is wrong and what would be right.</param>
public sealed record MappingFinding(string? Head, string Key, Diagnostic Found);
