using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;

namespace Sightglass.Web.Trials;

/// <summary>A card of the book that is served, and where it can be tried.</summary>
/// <param name="Name">Of its file, without the ending.</param>
/// <param name="Title">As it is written over it.</param>
/// <param name="Text">As the author wrote it.</param>
/// <param name="Situations">Those that are said to be for it.</param>
public sealed record TrialCard(string Name, string Title, SourceText Text, ImmutableArray<Situation> Situations);
