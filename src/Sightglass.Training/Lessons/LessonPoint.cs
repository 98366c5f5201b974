using System.Collections.Immutable;
using Sightglass.Book.Model;
using Sightglass.Training.Defects;

namespace Sightglass.Training.Lessons;

/// <summary>What is said in front of one item.</summary>
/// <param name="Item">Which.</param>
/// <param name="Says">Sentences of the book at the lesson's depth, in the order in which they are said.</param>
/// <param name="Hands">Whether those who are taught try it with their hands.</param>
/// <param name="Permission">Of whom that is asked first, or null.</param>
public sealed record LessonPoint(Item Item, ImmutableArray<string> Says, bool Hands, string? Permission)
{
    /// <summary>What does not work of it on that day.</summary>
    public ImmutableArray<Defect> Defects { get; init; } = [];

    public int Words => Says.Sum(s => s.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Length);
}
