using System.Collections.Immutable;
using Sightglass.Basics.Language;
using Sightglass.Book.Model;
using Sightglass.Training.Defects;

namespace Sightglass.Training.Lessons;

/// <summary>What is said in front of one item.</summary>
/// <param name="Item">Which.</param>
/// <param name="Says">Texts of the book at the lesson's depth, in the order in which they are said.</param>
/// <param name="Hands">Whether those who are taught try it with their hands.</param>
/// <param name="Permission">Of whom that is asked first, or null.</param>
public sealed record LessonPoint(Item Item, ImmutableArray<string> Says, bool Hands, string? Permission)
{
    /// <summary>What <c>Otherwise as told of</c> takes to say.</summary>
    private const int WordsOfAHint = 4;

    /// <summary>What does not work of it on that day.</summary>
    public ImmutableArray<Defect> Defects { get; init; } = [];

    /// <summary>Of its texts those that its station has told word by word of an earlier thing of the same sort: not said again.</summary>
    public ImmutableArray<string> Again { get; init; } = [];

    /// <summary>The thing of which they were told; null where all is said here.</summary>
    public string? As { get; init; }

    /// <summary>What is said here, each in the language that is spoken.</summary>
    public IEnumerable<string> Said => Says.Where(s => !Again.Contains(s)).Select(s => Say.Book(s)).Concat(As is { } other ? [Hint(other)] : []);

    /// <summary>How many words are said. In English, so that a lesson takes as long in any language.</summary>
    public int Words => Says.Where(s => !Again.Contains(s)).Sum(Count) + (As is { } other ? WordsOfAHint + Count(other) : 0);

    /// <summary>As it is told after what was told: by a hint at the thing that shares most with it, where that is shorter.</summary>
    /// <param name="before">Things of the same sort, in the order in which they were told.</param>
    internal LessonPoint After(IReadOnlyList<LessonPoint> before)
    {
        if (before.MaxBy(b => b.Says.Intersect(Says).Sum(Count)) is not { } other)
        {
            return this;
        }

        LessonPoint shorter = this with { Again = [.. Says.Where(other.Says.Contains)], As = other.Item.Name };
        return shorter.Words < Words ? shorter : this;
    }

    private string Hint(string other) => Again.All(t => t == Item.Normal) ? Say.With($"Normal as told of: {other}.") : Say.With($"Otherwise as told of: {other}.");

    private static int Count(string text) => text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Length;
}
