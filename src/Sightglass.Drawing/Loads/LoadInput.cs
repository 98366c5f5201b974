using System.Collections.Immutable;
using Sightglass.Basics.Language;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Model;

namespace Sightglass.Drawing.Loads;

/// <summary>What a plan of loads shows of a vehicle: its axles, its springs and what lies on its body, where they are.</summary>
/// <param name="Title">For readers.</param>
/// <param name="Axles">From the head of the train.</param>
/// <param name="Springs">In the order of the book.</param>
/// <param name="Masses">In the order of the book.</param>
/// <param name="From">m, where the vehicle begins.</param>
/// <param name="To">m, where it ends.</param>
/// <param name="HalfWidth">m from its middle to its side.</param>
/// <param name="IsTurned">Its front is at its end.</param>
public sealed record LoadInput(string Title, ImmutableArray<LoadAxle> Axles, ImmutableArray<LoadPoint> Springs, ImmutableArray<LoadPoint> Masses, double From, double To, double HalfWidth, bool IsTurned)
{
    private const string Axle = "axle";
    private const string Spring = "spring";
    private const string LiesOn = "lies on";

    /// <summary>In which loads are said: that of the book, tonnes where it has none.</summary>
    public required Unit Unit { get; init; }

    /// <summary>Whether a system has axles that something weighs on.</summary>
    public static bool Has(ClassBook book, string? system)
    {
        ArgumentNullException.ThrowIfNull(book);
        return book.Items.Values.Any(i => i.Kind.Name == Spring && (system is null || i.System == system)) && book.Items.Values.Any(i => IsAxle(i, system));
    }

    /// <summary>The loads of one vehicle.</summary>
    /// <param name="book">The book.</param>
    /// <param name="system">The system; null for all axles.</param>
    /// <param name="vehicle">Its index; null for the machine itself.</param>
    public static LoadInput Of(ClassBook book, string? system, int? vehicle = null)
    {
        ArgumentNullException.ThrowIfNull(book);
        Vehicle of = book.Vehicles.FirstOrDefault(v => v.Index == vehicle) ?? book.Vehicles.First(v => v.IsTheMachine);
        (double from, double to) = of.To > of.From ? (of.From, of.To) : (book.Front, book.Front + book.Length);
        Item[] items = [.. book.ItemsInOrder.Where(i => i.Vehicle.Index == of.Index && i.Position is not null)];
        return new(
            Say.With($"Wheel loads of {book.Title}"),
            [.. items.Where(i => IsAxle(i, system)).OrderBy(i => i.Position!.Value.X).Select(i => new LoadAxle(i.Name, Words(i), i.Position!.Value.X, Of(i, "most wheel load"), Of(i, "most difference")))],
            [.. items.Where(i => i.Kind.Name == Spring).Select(Point)],
            [.. items.Where(i => i.Parameters.ContainsKey(LiesOn)).Select(Point)],
            from, to, book.Width / 2, of.IsTurned)
        { Unit = book.ShownIn.GetValueOrDefault(Dimension.Kilogram) ?? UnitTable.Get("t") };
    }

    private static bool IsAxle(Item item, string? system) => item.Kind.Name == Axle && item.Position is not null && (system is null || item.System == system);

    private static LoadPoint Point(Item item) => new(item.Name, Words(item), item.Position!.Value.X, item.Position!.Value.Y);

    private static double? Of(Item axle, string parameter) => axle.Parameters.TryGetValue(parameter, out ParameterValue? value) && value.Number > 0 ? value.Number : null;

    private static string Words(Item item) => item.Label.Length > 0 ? Say.Book(item.Label) : Say.Begin(Say.Book(item.Name));
}
