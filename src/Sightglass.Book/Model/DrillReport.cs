using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Model;

/// <summary>One of the things that a trainee may report at the end of a drill; right is what is so.</summary>
/// <param name="Name">As it is offered: <c>the headlight needs a lamp</c>.</param>
/// <param name="Is">When it is right.</param>
/// <param name="ToldAs">The sentences by which the cards that solve the drill tell it.</param>
/// <param name="Because">How one could know, for the debrief.</param>
/// <param name="Span">Where it stands.</param>
public sealed record DrillReport(string Name, FormulaText Is, ImmutableArray<string> ToldAs, string Because, Span Span);
