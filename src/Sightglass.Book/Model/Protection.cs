using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Model;

/// <summary>What makes it safe to be in a dangerous place, with its owner.</summary>
/// <param name="Name">As cards say it.</param>
/// <param name="Span">Where it is declared.</param>
/// <param name="Sort">How somebody comes by it.</param>
/// <param name="AskedOf">The role that grants it; empty where it is set.</param>
/// <param name="Targets">Places or items where it is set; empty where it is asked for.</param>
/// <param name="Text">What it is, for people.</param>
public sealed record Protection(string Name, Span Span, ProtectionSort Sort, string AskedOf, ImmutableArray<string> Targets, string Text)
{
    /// <summary>Items without which nobody can set it: the box of the chocks.</summary>
    public ImmutableArray<string> Needs { get; init; } = [];
}
