using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Messages;

/// <summary>A code of a finding about a book: stable, and listed in docs/book.md.</summary>
/// <param name="Code">Such as <c>B030</c>.</param>
/// <param name="Meaning">What it says, in a sentence without the names of the case.</param>
public sealed record BookCode(string Code, Severity Severity, string Meaning);
