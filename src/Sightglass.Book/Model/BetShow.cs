using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Model;

/// <summary>A quantity that the wall shows while a bet runs.</summary>
/// <param name="Formula">Of true quantities.</param>
/// <param name="Name">What it is called on the chart; the formula where nothing is said.</param>
public sealed record BetShow(string Formula, string Name, Span Span);
