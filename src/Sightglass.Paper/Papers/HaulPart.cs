using System.Collections.Immutable;

namespace Sightglass.Paper.Papers;

/// <summary>A part of what is told of a run: a heading with sentences, and a table where numbers stand better in one.</summary>
/// <param name="Heading">In the language that is spoken.</param>
/// <param name="Columns">Of the table; empty where there is none.</param>
/// <param name="Rows">Cells in the order of the columns.</param>
/// <param name="Sentences">Below it.</param>
public sealed record HaulPart(string Heading, ImmutableArray<string> Columns, ImmutableArray<ImmutableArray<string>> Rows, ImmutableArray<string> Sentences)
{
    public HaulPart(string heading, ImmutableArray<string> sentences)
        : this(heading, [], [], sentences)
    {
    }
}
