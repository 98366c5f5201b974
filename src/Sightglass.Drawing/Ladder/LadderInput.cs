using System.Collections.Immutable;
using Sightglass.Basics.Language;
using Sightglass.Book.Model;

namespace Sightglass.Drawing.Ladder;

/// <summary>Wires and what lies between them, as a circuit drawing shows them.</summary>
/// <param name="Title">For readers.</param>
/// <param name="Wires">In the order of the book.</param>
/// <param name="Parts">In the order of the book.</param>
public sealed record LadderInput(string Title, ImmutableArray<LadderWire> Wires, ImmutableArray<LadderPart> Parts)
{
    /// <summary>The wire at which most parts meet, and the one at which most end: what is drawn hangs between them. Where no source hangs on the lower one, as in a car that is fed through a plug, the upper one is the wire that feeds most and is fed by least.</summary>
    public (string Plus, string Minus) Rails
    {
        get
        {
            string minus = MostMet(Parts.Select(p => p.Minus), "");
            HashSet<string> frames = [.. Wires.Where(w => w.IsFrame).Select(w => w.Id)];
            bool fed = Parts.Any(p => p.IsSource && p.Minus == minus);
            return (fed ? MostMet(Parts.SelectMany(p => new[] { p.Plus, p.Minus }).Where(w => !frames.Contains(w)), minus) : Feeding(minus), minus);
        }
    }

    /// <summary>The circuits of a system.</summary>
    /// <param name="book">The book.</param>
    /// <param name="system">The system; null for all that conducts.</param>
    /// <param name="vehicle">Only of this vehicle; null for all.</param>
    public static LadderInput Of(ClassBook book, string? system, int? vehicle = null)
    {
        ArgumentNullException.ThrowIfNull(book);
        ImmutableArray<LadderPart> parts =
        [
            .. book.ItemsInOrder.Where(i => i.Kind is { Conducts: true, Alternates: false } && i.From is not null && i.To is not null && (system is null || i.System == system) && (vehicle is null || i.Vehicle.Index == vehicle)).Select(Part),
        ];
        HashSet<string> met = [.. parts.SelectMany(p => new[] { p.Plus, p.Minus })];
        IEnumerable<LadderWire> wires = book.ItemsInOrder.Where(i => met.Contains(i.Name)).Select(i => new LadderWire(i.Name, Words(i)));
        if (met.Contains(PortReference.Frame))
        {
            wires = wires.Append(new(PortReference.Frame, Say.It("frame")) { IsFrame = true });
        }

        string title = system is null ? Say.Book(book.Title) : Say.With($"{Say.Begin(Say.Book(system))} system of {book.Title}");
        return new(title, [.. wires], parts);
    }

    /// <summary>Whether a system is a circuit, or has one.</summary>
    public static bool Has(ClassBook book, string? system)
    {
        ArgumentNullException.ThrowIfNull(book);
        return book.Items.Values.Any(i => i.Kind is { Conducts: true, Alternates: false } && (system is null || i.System == system));
    }

    /// <summary>The one named most often, of several the first in the book.</summary>
    private string MostMet(IEnumerable<string> ends, string but)
    {
        Dictionary<string, int> order = Wires.Select((w, i) => (w.Id, i)).ToDictionary(w => w.Id, w => w.i, StringComparer.Ordinal);
        return ends.Where(e => e != but).CountBy(e => e).OrderByDescending(e => e.Value).ThenBy(e => order[e.Key]).Select(e => e.Key).FirstOrDefault(Wires.IsEmpty ? "" : Wires[0].Id);
    }

    /// <summary>The wire at which parts begin most, less those that end there; of several the first in the book.</summary>
    private string Feeding(string but) =>
        Wires.Where(w => w.Id != but && !w.IsFrame).Select(w => (w.Id, Net: Parts.Count(p => p.Plus == w.Id) - Parts.Count(p => p.Minus == w.Id))).OrderByDescending(w => w.Net).Select(w => w.Id).FirstOrDefault(Wires.IsEmpty ? "" : Wires[0].Id);

    private static LadderPart Part(Item item)
    {
        LadderSymbol symbol = SymbolOf(item.Kind.Symbol);
        // A source's second end is its plus pole; of anything else the first lies on the plus side.
        bool turned = symbol is LadderSymbol.Battery or LadderSymbol.Charger;
        return new(item.Name, Words(item), (turned ? item.To : item.From)!.Item, (turned ? item.From : item.To)!.Item, symbol) { IsOperated = item.Positions.Length > 1 };
    }

    private static string Words(Item item) => item.Label.Length > 0 ? Say.Book(item.Label) : Say.Begin(Say.Book(item.Name));

    private static LadderSymbol SymbolOf(string symbol) => symbol switch
    {
        "battery" => LadderSymbol.Battery,
        "charger" => LadderSymbol.Charger,
        "motor" => LadderSymbol.Motor,
        "contact" => LadderSymbol.Contact,
        "breaker" => LadderSymbol.Breaker,
        "coil" => LadderSymbol.Coil,
        "lamp" => LadderSymbol.Lamp,
        "check" => LadderSymbol.Diode,
        "load" => LadderSymbol.Load,
        _ => LadderSymbol.Resistance,
    };
}
