using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Model;

/// <summary>A named truth declared by the book; only for must-never, done-when, hazards and evaluation.</summary>
public sealed record Fact(string Name, Span Span, string Formula, Span FormulaSpan, string Text)
{
    /// <summary>The vehicle it belongs to.</summary>
    public Vehicle Vehicle { get; init; } = Vehicle.Alone;
}
