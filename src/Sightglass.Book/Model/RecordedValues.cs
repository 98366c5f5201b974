using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Model;

/// <summary>What a column of a recording holds, by row.</summary>
/// <param name="Source">The file.</param>
/// <param name="Numbers">SI, or the place of a word in <paramref name="Words"/>; not a number where nothing was recorded.</param>
/// <param name="Words">The words that occur; empty for numbers.</param>
/// <param name="Starts">Where each stands.</param>
public sealed record RecordedValues(SourceText Source, ImmutableArray<double> Numbers, ImmutableArray<string> Words, ImmutableArray<int> Starts)
{
    public bool Has(int row) => !double.IsNaN(Numbers[row]);

    /// <summary>The word of a row that has one.</summary>
    public string WordOf(int row) => Words[(int)Numbers[row]];

    /// <summary>Where the value of a row stands.</summary>
    public Span SpanOf(int row) => Source.Between(Starts[row], Starts[row]);
}
