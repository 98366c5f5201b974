using Sightglass.Book.Model;

namespace Sightglass.Cli.Output;

/// <summary>The trains of a book, for a program.</summary>
internal sealed record TrainListAnswer(IReadOnlyList<TrainListAnswer.Entry> Trains)
{
    public static TrainListAnswer Of(ClassBook book) => new([.. book.Trains.Values.OrderBy(t => t.Span).Select(t => new Entry(t.Name, t.Text, [.. t.Vehicles.Select(v => v.Class)]))]);

    /// <summary>A train.</summary>
    internal sealed record Entry(string Train, string Text, IReadOnlyList<string> Vehicles);
}
