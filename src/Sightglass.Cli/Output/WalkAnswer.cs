using Sightglass.Book.Model;
using Sightglass.Drawing.Walk;

namespace Sightglass.Cli.Output;

/// <summary>What <c>walk --json</c> answers.</summary>
internal sealed record WalkAnswer(string Title, string? RoadNumber, string Notice, IReadOnlyList<WalkAnswer.Stop> Stops)
{
    public static WalkAnswer Of(ClassBook book, IEnumerable<WalkStop> stops) => new(
        book.Title,
        book.RoadNumberInUse,
        book.Notice,
        [.. stops.Select(s => new Stop(
            s.Place.Name,
            s.Side.ToString().ToLowerInvariant(),
            s.Place.OnGround,
            s.Place.Text,
            s.EnteredFrom,
            s.SecondsOnward,
            [.. s.Items.Select(i => Met.Of(book.Items[i]))]))]);

    /// <param name="SecondsOnward">Walking time to the next place on the ground.</param>
    internal sealed record Stop(string Place, string Side, bool OnGround, string Text, string? EnteredFrom, double? SecondsOnward, IReadOnlyList<Met> Items);

    internal sealed record Met(string Item, string Kind, string? System, string Purpose, string Normal, IReadOnlyList<string> Cautions, IReadOnlyList<string> Positions)
    {
        public static Met Of(Item item) => new(
            item.Name, item.Kind.Name, item.System, item.Purpose, item.Normal, [.. item.Cautions.GravestFirst().Select(c => $"{c.Word}: {c.Text}")], [.. item.Positions]);
    }
}
