using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Model;

/// <summary>What people bring with them from older machines, which no book describes: what the hand did there, and what that does here.</summary>
public sealed record Habit(string Name, Span Span, string Text, ImmutableArray<HabitLine> Lines);
