using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Model;

/// <summary>One answer of a bet.</summary>
/// <param name="Says">For people to read.</param>
/// <param name="When">The condition under which it has come true, judged at the end; null where nothing else has.</param>
public sealed record BetChoice(string Says, string? When, Span WhenSpan, Span Span);
