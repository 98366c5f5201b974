using System.Collections.Immutable;
using Sightglass.Book.Model;

namespace Sightglass.Drawing.Diagram;

/// <summary>A network to be drawn: stores, paths, machines and what shows or moves them.</summary>
/// <param name="Title">Said to people who cannot see the drawing.</param>
/// <param name="Medium">fuel, main, brake, power, control, water; decides colour and pattern of the lines.</param>
public sealed record DiagramInput(string Title, string Medium, ImmutableArray<DiagramNode> Nodes)
{
    /// <summary>What vehicles are called above them, by their index, where it is not their name.</summary>
    public ImmutableSortedDictionary<int, string> Captions { get; init; } = ImmutableSortedDictionary<int, string>.Empty;

    /// <summary>Couplings that are joined crosswise.</summary>
    public ImmutableArray<DiagramCrossing> Crossings { get; init; } = [];

    /// <summary>The network of a system of a book, or of the whole book.</summary>
    /// <param name="book">The book.</param>
    /// <param name="system">A system's name, or null for all that is joined by paths.</param>
    /// <param name="vehicle">Index of the only vehicle to draw, with what couples it to the next; null for all that are coupled.</param>
    /// <param name="crossed">Names of the mistakes by which couplings are joined crosswise; null for none. The other coupling is drawn with its hoses, whatever its system is.</param>
    public static DiagramInput Of(ClassBook book, string? system = null, int? vehicle = null, IReadOnlyCollection<string>? crossed = null) =>
        new DiagramReader(book, system, vehicle, crossed ?? []).Read();
}
