using System.Collections.Immutable;
using System.Text.Json;
using Sightglass.Basics.Language;
using Sightglass.Book.Model;
using Sightglass.Training.Routes;

namespace Sightglass.Training.WalkDowns;

/// <summary>What a phone takes along on a walk-down: the places in walking order, what is to be found at each, and what is dangerous there.</summary>
/// <param name="RoadNumber">Null where the phone asks for it.</param>
/// <param name="RoadNumbers">Those of the book.</param>
/// <param name="OnwardKey">The arrow key that walks on: the strip runs towards it.</param>
public sealed record WalkDownSheet(
    string Book,
    string Edition,
    string Notice,
    string? RoadNumber,
    ImmutableArray<string> RoadNumbers,
    string Purpose,
    string OnwardKey,
    ImmutableArray<string> Arrange,
    ImmutableArray<WalkDownSheet.Stop> Stops)
{
    private static readonly JsonSerializerOptions s_json = new() { PropertyNamingPolicy = JsonNamingPolicy.SnakeCaseLower };

    /// <summary>The sheet of a route.</summary>
    public static WalkDownSheet Of(RoutePlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ClassBook book = plan.Book;
        return new(
            book.Title,
            book.Edition,
            book.Notice,
            book.RoadNumberInUse,
            [.. book.RoadNumbers.Keys],
            plan.Request.Purpose,
            book.WalkStart == Side.Right ? "ArrowLeft" : "ArrowRight",
            [.. plan.ToBeThere.Select(n => Say.With($"{Of(n.Protection)}, before you go to: {Say.Names(n.Places, "; ")}"))],
            [.. plan.Stops.Select(s => StopOf(book, s))]);
    }

    /// <summary>As the phone reads it.</summary>
    public string ToJson() => JsonSerializer.Serialize(this, s_json);

    private static Stop StopOf(ClassBook book, RouteStop stop) => new(
        stop.Place.Name,
        stop.Place.Text,
        Math.Round(stop.Metres),
        [.. stop.Hazards.Concat(stop.OnTouch).OrderByDescending(h => h.Caution.Word).DistinctBy(h => h.Caution.Text).Select(h => Warned(book, h, stop.OnTouch.Contains(h)))],
        [.. stop.Items.Select(i => new Thing(i.Name, i.Label == i.Name ? "" : i.Label, i.Purpose, i.Normal, i.Positions.Contains("open")))]);

    private static Danger Warned(ClassBook book, Hazard hazard, bool onTouch) =>
        new(hazard.Caution.Word.ToString().ToLowerInvariant(), hazard.Caution.Text, hazard.Protection is { } p ? Of(book.Protections[p]) : "", onTouch);

    private static string Of(Protection protection) => protection.AskedOf.Length > 0 ? Say.With($"{protection.Name}, asked of the {protection.AskedOf}") : Say.Book(protection.Name);

    /// <param name="Metres">Of walking since the stop before.</param>
    public sealed record Stop(string Place, string Text, double Metres, ImmutableArray<Danger> Dangers, ImmutableArray<Thing> Items);

    /// <param name="Word">Signal word in small letters.</param>
    /// <param name="Protection">To have before; empty where none is needed.</param>
    /// <param name="OnTouch">Whether it is only for who touches.</param>
    public sealed record Danger(string Word, string Text, string Protection, bool OnTouch);

    /// <param name="Label">As the book has it; empty where it is the name.</param>
    /// <param name="Opens">Whether there is a way in which it is open.</param>
    public sealed record Thing(string Name, string Label, string Purpose, string Normal, bool Opens);
}
