using System.Collections.Immutable;
using System.Globalization;
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
            new PaperBlock.Paragraph("One system on a sheet", ParagraphSort.Eyebrow),
            new PaperBlock.Heading(1, PaperWords.Capital(system)),
        ];
        if (Diagram(book, system) is { } picture)
        {
            blocks.Add(picture);
        }

        blocks.Add(new PaperBlock.Paragraph(sheet.Text, ParagraphSort.Lead));

        blocks.AddRange(Cautions(book, items));
        blocks.AddRange(Table("What is operated", ["Control", "Where", "Usual position", "Who may"], [3, 2.4, 1.6, 2], items.Where(i => !i.Positions.IsEmpty).Select(Operated)));
        blocks.AddRange(Table("What is read", ["Indication", "Where", "Scale", "Normal"], [3, 2.4, 1.6, 3], items.Where(i => i.Reading is not null).Select(Read)));
        blocks.AddRange(Table("What else is met", ["Item", "Where", "Normal"], [3, 2.4, 4], items.Where(i => i.Positions.IsEmpty && i.Reading is null).Select(Met)));
        if (address is not null)
        {
            blocks.Add(new PaperBlock.Code(address, "The system alive on its page."));
        }

        return new PaperDocument($"{PaperWords.Capital(system)}: {PaperWords.Machine(book)}", PaperLook.Sheet, [.. blocks]) { Style = "system", Lying = blocks.OfType<PaperBlock.Picture>().Any(), Machine = PaperWords.Machine(book), Notice = PaperWords.Notice(book) };
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
        return new PaperBlock.Picture(drawing, $"System diagram of {system}: {nodes}.")
        {
            Caption = PaperText.Strong("Plate.").And(" A valve’s handle lies in line when open and across when closed; all stands as usual."),
            MostHeight = 0.82,
        };
    }

    private static IEnumerable<PaperBlock> Cautions(ClassBook book, Item[] items)
    {
        HashSet<string> names = [.. items.Select(i => i.Name)];
        PaperBlock[] notices =
        [
            .. book.HazardsInOrder.Where(h => h.Items.Any(names.Contains)).Select(h => h.Caution).Concat(items.SelectMany(i => i.Cautions))
                .DistinctBy(c => c.Text).OrderByDescending(c => c.Word).Select(c => new PaperBlock.Notice(c.Word, c.Text)),
        ];
        return notices.Length == 0 ? [] : [new PaperBlock.Heading(2, "Beware"), .. notices.Chunk(2).Select(two => new PaperBlock.Columns([two[0]], [.. two.Skip(1)]))];
    }

    private static IEnumerable<PaperBlock> Table(string title, ImmutableArray<string> heads, ImmutableArray<double> widths, IEnumerable<ImmutableArray<PaperText>> rows)
    {
        ImmutableArray<ImmutableArray<PaperText>> all = [.. rows];
        return all.IsEmpty ? [] : [new PaperBlock.Heading(2, title), new PaperBlock.Table(heads, all) { Widths = widths, RowHeads = true }];
    }

    private static ImmutableArray<PaperText> Operated(Item item) => [Name(item), Where(item), item.UsualPosition ?? "", Who(item)];

    private static ImmutableArray<PaperText> Read(Item item) => [Name(item), Where(item), Scale(item.Reading!), Normal(item)];

    private static ImmutableArray<PaperText> Met(Item item) => [Name(item), Where(item), item.Normal];

    private static string Name(Item item) => PaperWords.Capital(item.Name);

    private static string Where(Item item) => item.Places[0];

    private static string Who(Item item) => item.Authority is { } a
        ? string.Join(", ", a.Who) + (a.Permission is { } owner ? $", permission of the {owner}" : "") + (a.Told.IsDefaultOrEmpty ? "" : $"; told: {string.Join(", ", a.Told)}")
        : "";

    private static string Scale(Reading reading) =>
        double.IsFinite(reading.Minimum) && double.IsFinite(reading.Maximum) && reading.Maximum > reading.Minimum
            ? $"{QuantityFormat.Number(reading.Minimum, reading.Unit)} to {QuantityFormat.Text(reading.Maximum, reading.Unit)}"
            : QuantityFormat.Symbol(reading.Unit).ToString(CultureInfo.InvariantCulture);

    private static string Normal(Item item) =>
        item.Reading is { NormalFrom: { } from, NormalTo: { } to, Unit: var unit }
            ? $"{QuantityFormat.Number(from, unit)} to {QuantityFormat.Text(to, unit)}"
            : item.Normal;
}
