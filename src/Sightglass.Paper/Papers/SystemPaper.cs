using System.Collections.Immutable;
using System.Globalization;
using Sightglass.Basics.Language;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Drawing.Diagram;
using Sightglass.Paper.Document;

namespace Sightglass.Paper.Papers;

/// <summary>One running system on a sheet: what it does, its diagram, what is operated, what is read, what to beware of.</summary>
public static class SystemPaper
{
    /// <param name="book">With the items of one road number, or the class as described.</param>
    /// <param name="system">A name of the book's.</param>
    /// <param name="address">Where it is found on a page; null for none.</param>
    /// <exception cref="ArgumentException">The book has no such system.</exception>
    public static PaperDocument Of(ClassBook book, string system, string? address = null)
    {
        ArgumentNullException.ThrowIfNull(book);
        if (!book.Systems.TryGetValue(system, out SystemSheet? sheet))
        {
            throw new ArgumentException($"The book has no system `{system}`.", nameof(system));
        }

        Item[] items = [.. book.ItemsInOrder.Where(i => i.System == system && !i.Places.IsEmpty && i.Kind.Role != KindRole.Mistake)];
        List<PaperBlock> blocks =
        [
            new PaperBlock.Paragraph(Say.It("One system on a sheet"), ParagraphSort.Eyebrow),
            new PaperBlock.Heading(1, PaperWords.Named(system)),
        ];
        if (Diagram(book, system) is { } picture)
        {
            blocks.Add(picture);
        }

        blocks.Add(new PaperBlock.Paragraph(Say.Book(sheet.Text), ParagraphSort.Lead));

        blocks.AddRange(Cautions(book, items));
        blocks.AddRange(Table(Say.It("What is operated"), [Say.It("Control"), Say.It("Where"), Say.It("Usual position"), Say.It("Who may")], [3, 2.4, 1.6, 2], items.Where(i => !i.Positions.IsEmpty).Select(Operated)));
        blocks.AddRange(Table(Say.It("What is read"), [Say.It("Indication"), Say.It("Where"), Say.It("Scale"), Say.It("Normal")], [3, 2.4, 1.6, 3], items.Where(i => i.Reading is not null).Select(Read)));
        blocks.AddRange(Table(Say.It("What else is met"), [Say.It("Item"), Say.It("Where"), Say.It("Normal")], [3, 2.4, 4], items.Where(i => i.Positions.IsEmpty && i.Reading is null).Select(Met)));
        if (address is not null)
        {
            blocks.Add(new PaperBlock.Code(address, Say.It("This system on its page.")));
        }

        return new PaperDocument($"{PaperWords.Named(system)}: {PaperWords.Machine(book)}", PaperLook.Sheet, [.. blocks]) { Style = "system", Lying = blocks.OfType<PaperBlock.Picture>().Any(), Machine = PaperWords.Machine(book), Notice = PaperWords.Notice(book) };
    }

    private static PaperBlock.Picture? Diagram(ClassBook book, string system)
    {
        DiagramInput input = DiagramInput.Of(book, system);
        if (input.Nodes.IsEmpty)
        {
            return null;
        }

        DiagramOptions options = new() { Interactive = false, Truth = false };
        string drawing = DiagramDrawing.Render(DiagramLayout.Of(input, options), DiagramState.Still with { ShowTruth = false }, options);
        string nodes = string.Join(", ", input.Nodes.Select(n => n.Label).Distinct(StringComparer.Ordinal));
        return new PaperBlock.Picture(drawing, Say.With($"System diagram of {system}: {nodes}."))
        {
            Caption = PaperText.Strong(Say.It("Plate.")).And(" " + Say.It("A valve’s handle lies in line when open and across when closed; all stands as usual.")),
            MostHeight = 0.82,
        };
    }

    private static IEnumerable<PaperBlock> Cautions(ClassBook book, Item[] items)
    {
        HashSet<string> names = [.. items.Select(i => i.Name)];
        PaperBlock[] notices =
        [
            .. book.HazardsInOrder.Where(h => h.Items.Any(names.Contains)).Select(h => h.Caution).Concat(items.SelectMany(i => i.Cautions))
                .GravestFirst().Select(c => new PaperBlock.Notice(c.Word, Say.Book(c.Text))),
        ];
        return notices.Length == 0 ? [] : [new PaperBlock.Heading(2, Say.It("Beware")), .. notices.Chunk(2).Select(two => new PaperBlock.Columns([two[0]], [.. two.Skip(1)]))];
    }

    private static IEnumerable<PaperBlock> Table(string title, ImmutableArray<string> heads, ImmutableArray<double> widths, IEnumerable<ImmutableArray<PaperText>> rows)
    {
        ImmutableArray<ImmutableArray<PaperText>> all = [.. rows];
        return all.IsEmpty ? [] : [new PaperBlock.Heading(2, title), new PaperBlock.Table(heads, all) { Widths = widths, RowHeads = true }];
    }

    private static ImmutableArray<PaperText> Operated(Item item) => [Name(item), Where(item), Say.Word(item.UsualPosition ?? ""), Who(item)];

    private static ImmutableArray<PaperText> Read(Item item) => [Name(item), Where(item), Scale(item.Reading!), Normal(item)];

    private static ImmutableArray<PaperText> Met(Item item) => [Name(item), Where(item), Say.Book(item.Normal)];

    private static string Name(Item item) => PaperWords.Named(item.Name);

    private static string Where(Item item) => Say.Book(item.Places[0]);

    private static string Who(Item item) => item.Authority is { } a
        ? Say.Names(a.Who) + (a.Permission is { } owner ? Say.With($", permission of the {owner}") : "") + (a.Told.IsDefaultOrEmpty ? "" : Say.With($"; told: {Say.Names(a.Told)}"))
        : "";

    private static string Scale(Reading reading) =>
        double.IsFinite(reading.Minimum) && double.IsFinite(reading.Maximum) && reading.Maximum > reading.Minimum
            ? Say.With($"{QuantityFormat.Number(reading.Minimum, reading.Unit)} to {QuantityFormat.Text(reading.Maximum, reading.Unit)}")
            : QuantityFormat.Symbol(reading.Unit).ToString(CultureInfo.InvariantCulture);

    private static string Normal(Item item) =>
        item.Reading is { NormalFrom: { } from, NormalTo: { } to, Unit: var unit }
            ? Say.With($"{QuantityFormat.Number(from, unit)} to {QuantityFormat.Text(to, unit)}")
            : Say.Book(item.Normal);
}
