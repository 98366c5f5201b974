using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Model;

/// <summary>A danger that belongs to places and items, the condition under which it bites, and its caution.</summary>
public sealed record Hazard(string Name, Span Span, ImmutableArray<string> Places, ImmutableArray<string> Items, string? Formula, Span FormulaSpan, string? Protection, Caution Caution)
{
    /// <summary>
    /// Whether it injures who meets it: what needs a protection, and what is told as a danger or a warning. A caution or a notice alone is
    /// told, and it is for the person to heed it.
    /// </summary>
    public bool IsCritical => Protection is not null || Caution.Word is SignalWord.Danger or SignalWord.Warning;

    /// <summary>Whether only touching its items injures, and its places are where it is told; otherwise being there does as well.</summary>
    public bool OnTouch { get; init; }

    /// <summary>Items of which only what joins them to another vehicle is dangerous, to whoever couples or parts it: in a train those couplings are among <see cref="Items"/>, and in a vehicle by itself nothing is.</summary>
    public ImmutableArray<string> Ends { get; init; } = [];

    /// <summary>Whether it injures whoever is at its places without protection, whatever the machine does: known to all, so that nobody passes there who can go round.</summary>
    public bool IsStanding => IsCritical && !OnTouch && Formula is null;

    /// <summary>The vehicle it belongs to.</summary>
    public Vehicle Vehicle { get; init; } = Vehicle.Alone;
}
