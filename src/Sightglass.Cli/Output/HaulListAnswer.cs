using System.Collections.Immutable;
using Sightglass.Book.Model;

namespace Sightglass.Cli.Output;

/// <summary>The routes of a book, for a program.</summary>
internal sealed record HaulListAnswer(ImmutableArray<HaulListAnswer.Row> Routes)
{
    public static HaulListAnswer Of(ClassBook book) => new(
        [.. book.Routes.Values.OrderBy(r => r.Span).Select(r => new Row(r.Name, r.Text, r.Length, [.. r.Rails.Select(c => c.Name)], [.. r.Places.Select(p => new Place(p.Name, p.At, p.Stops))]))]);

    internal sealed record Row(string Route, string Text, double LengthM, ImmutableArray<string> Rails, ImmutableArray<Place> Places);

    /// <param name="StopsS">Null where a train goes by.</param>
    internal sealed record Place(string Name, double MilepostM, double? StopsS);
}
