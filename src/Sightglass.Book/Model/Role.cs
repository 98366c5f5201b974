using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Model;

/// <summary>A role a person can have.</summary>
/// <remarks>Speed in m/s at an ordinary walk, reaction in s.</remarks>
public sealed record Role(string Name, Span Span, double WalkingSpeed, double ReactionSeconds, string Text, ImmutableArray<string> Reaches)
{
    /// <summary>True: goes only to the places in <see cref="Reaches"/>, perhaps none; false: to all places.</summary>
    public bool IsBound { get; init; }
}
