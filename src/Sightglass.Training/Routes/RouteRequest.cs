using System.Collections.Immutable;
using Sightglass.Basics.Language;
using Sightglass.Book.Model;
using Sightglass.Training.Differences;

namespace Sightglass.Training.Routes;

/// <summary>What a walk is to show, to whom, and within which bounds; names are the book's.</summary>
/// <param name="Purpose">In words: <c>before departure</c>.</param>
/// <param name="Items">What is shown; one that has no place is left out.</param>
public sealed record RouteRequest(string Purpose, ImmutableArray<string> Items)
{
    /// <summary>An ordinary walk on ballast and steps, m/s (common practice, no source).</summary>
    public const double OrdinaryPace = 1.3;

    /// <summary>The purpose that shows everything.</summary>
    public const string Whole = "all";

    /// <summary>The purpose that shows what differs on a road number.</summary>
    public const string Changes = "changes";

    /// <summary>The purpose as people read it: a walk's or system's name in their language, or a sentence of the program.</summary>
    public string Said => Sentence is { } sentence ? Say.With(sentence) : Say.Book(Purpose);

    /// <summary>What the purpose says where it is no name of the book.</summary>
    public FormattableString? Sentence { get; init; }

    /// <summary>Items that are shown one after the other.</summary>
    public ImmutableArray<string> InOrder { get; init; } = [];

    /// <summary>Null for the place at which the walk round the machine begins.</summary>
    public string? From { get; init; }

    /// <summary>Null where any last stop will do.</summary>
    public string? To { get; init; }

    public ImmutableArray<string> Closed { get; init; } = [];

    /// <summary>Whose places the group keeps to; null for all places.</summary>
    public string? Role { get; init; }

    /// <summary>How many walk, whoever speaks among them; null where it does not matter.</summary>
    public int? People { get; init; }

    /// <summary>m/s on the ground.</summary>
    public double Pace { get; init; } = OrdinaryPace;

    /// <summary>Everything that has a place.</summary>
    public static RouteRequest OfWhole(ClassBook book)
    {
        ArgumentNullException.ThrowIfNull(book);
        return Of($"the whole machine", [.. book.ItemsInOrder.Select(i => i.Name)]);
    }

    /// <summary>All of a system.</summary>
    public static RouteRequest OfSystem(ClassBook book, string system)
    {
        ArgumentNullException.ThrowIfNull(book);
        return new(system, [.. ItemsOf(book, system)]);
    }

    /// <summary>What differs on a road number: what its modifications name and what really comes out otherwise, as the parts of an assembly do whose uses are changed.</summary>
    /// <param name="book">With the items of the road number.</param>
    /// <exception cref="ArgumentException">No road number is in use.</exception>
    public static RouteRequest OfChanges(ClassBook book)
    {
        ArgumentNullException.ThrowIfNull(book);
        string number = book.RoadNumberInUse ?? throw new ArgumentException("The book is for no road number.", nameof(book));
        IEnumerable<string> named = book.RoadNumbers[number].Modifications.SelectMany(m => m.ChangedItems).Where(book.Items.ContainsKey);
        IEnumerable<string> differing = MachineComparison.Of(book.AsDescribed(), book).Select(d => d.After).OfType<Item>().Where(i => i.Vehicle.IsTheMachine).Select(i => i.Name);
        return Of($"what differs on {number}", [.. named.Concat(differing).Distinct(StringComparer.Ordinal)]);
    }

    /// <summary>A purpose that no name of the book says.</summary>
    public static RouteRequest Of(FormattableString sentence, ImmutableArray<string> items) => new(FormattableString.Invariant(sentence), items) { Sentence = sentence };

    /// <summary>A walk that the book describes.</summary>
    /// <param name="book">Whose walk it is.</param>
    /// <param name="walk">One of its own.</param>
    /// <param name="ofCard">Items that a card of the book, by its file's name, has to do with.</param>
    public static RouteRequest Of(ClassBook book, PlannedWalk walk, Func<string, IEnumerable<string>> ofCard)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(walk);
        return new(walk.Name, [.. walk.InOrder.Concat(walk.Items).Concat(walk.Systems.SelectMany(s => ItemsOf(book, s))).Concat(walk.Cards.SelectMany(ofCard)).Distinct(StringComparer.Ordinal)])
        {
            InOrder = walk.InOrder,
            From = walk.From,
            To = walk.To,
            Closed = walk.Closed,
            Role = walk.Role,
        };
    }

    private static IEnumerable<string> ItemsOf(ClassBook book, string system) => book.ItemsInOrder.Where(i => i.System == system).Select(i => i.Name);
}
