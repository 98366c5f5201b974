using System.Collections.Immutable;
using Sightglass.Book.Model;

namespace Sightglass.Cli.Output;

/// <summary>What a book looks into, for a program.</summary>
internal sealed record WhyListAnswer(ImmutableArray<WhyListAnswer.Row> Searches)
{
    public static WhyListAnswer Of(ClassBook book) => new([.. book.Searches.Values.OrderBy(s => s.Span).Select(s => new Row(s.Name, s.Text, s.Wanted, s.Situation, s.Within))]);

    /// <summary>A search.</summary>
    internal sealed record Row(string Name, string Text, string Wanted, string Situation, double WithinS);
}
