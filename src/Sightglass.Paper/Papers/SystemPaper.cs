using System.Collections.Immutable;
using System.Globalization;
using Sightglass.Basics.Language;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Cards.Story;
using Sightglass.Paper.Document;
using Sightglass.Paper.Photos;

namespace Sightglass.Paper.Papers;

/// <summary>One running system on a sheet: what it does, its diagram, what is operated, what is read, what to beware of.</summary>
public static class SystemPaper
{
    private const int MostPhotos = 4;
    private const int PhotosAcross = 2;

    /// <param name="book">With the items of one road number, or the class as described.</param>
    /// <param name="system">A name of the book's.</param>
    /// <param name="address">Where it is found on a page; null for none.</param>
    /// <param name="on">The sheet that it is for; the usual one where null.</param>
    /// <param name="album">Pictures of the machine; null for none.</param>
    /// <param name="units">In which its drawing says quantities; its words by <see cref="UnitWords"/>.</param>
    /// <exception cref="ArgumentException">The book has no such system.</exception>
    public static PaperDocument Of(ClassBook book, string system, string? address = null, PaperSheet? on = null, PaperAlbum? album = null, PaperUnits units = PaperUnits.Book)
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
        on ??= PaperSheet.Default(PaperLook.Sheet);
        string lead = Say.Book(sheet.Text);
        blocks.Add(new PaperBlock.Paragraph(lead, ParagraphSort.Lead));
        DiagramPlates? plates = DiagramPlates.Of(book, system, on, PaperWords.Notice(book), lead, units);
        IEnumerable<PaperBlock> pictures = [.. plates?.Pictures(book, system) ?? [], .. LoadPlates.Of(book, system, plates?.Sheet ?? on, PaperWords.Notice(book)), .. CircuitPlates.Of(book, system, plates?.Sheet ?? on, PaperWords.Notice(book))];
        blocks.AddRange(plates is { IsUnderTitle: true } ? pictures.Concat(Cautions(book, items)) : Cautions(book, items).Concat(pictures));
        ImmutableArray<PaperPhoto> photos = album?.Of(items.Select(i => i.Name), MostPhotos) ?? [];
        blocks.AddRange(photos.IsEmpty ? [] : [new PaperBlock.Heading(2, Say.It("What it looks like")), .. photos.Chunk(PhotosAcross).Select(row => new PaperBlock.Photos([.. row]))]);
        blocks.AddRange(Table(Say.It("What is operated"), [Say.It("Control"), Say.It("Where"), Say.It("Usual position"), Say.It("Who may")], [3, 2.4, 1.6, 2], items.Where(i => !i.Positions.IsEmpty).Select(Operated)));
        blocks.AddRange(Table(Say.It("What is read"), [Say.It("Indication"), Say.It("Where"), Say.It("Scale"), Say.It("Normal")], [3, 2.4, 1.6, 3], items.Where(i => i.Reading is not null).Select(Read)));
        blocks.AddRange(Table(Say.It("What else is met"), [Say.It("Item"), Say.It("Where"), Say.It("Normal")], [3, 2.4, 4], items.Where(i => i.Positions.IsEmpty && i.Reading is null).Select(Met)));
        if (address is not null)
        {
            blocks.Add(new PaperBlock.Code(address, Say.It("This system on its page.")));
        }

        return new PaperDocument($"{PaperWords.Named(system)}: {PaperWords.Machine(book)}", PaperLook.Sheet, [.. blocks]) { Style = "system", Lying = plates is not null && plates.Sheet != on, Machine = PaperWords.Machine(book), Notice = PaperWords.Notice(book) };
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

    private static ImmutableArray<PaperText> Operated(Item item) => [Name(item), Where(item), PositionWords.Of(item.Name, item.UsualPosition ?? ""), Who(item)];

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
