using System.Text.RegularExpressions;
using Sightglass.Paper.Document;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Graphics.Operations;
using UglyToad.PdfPig.Graphics.Operations.MarkedContent;
using UglyToad.PdfPig.Graphics.Operations.TextObjects;
using UglyToad.PdfPig.Tokens;

namespace Sightglass.Paper.Tests;

/// <summary>
/// Our PDFs read back by PdfPig: language, title, structure, what pictures show, heads of tables, the order of words, fonts, lines instead of pixels.
/// What is wanted of them: ISO 32000-1, 14.7 and 14.8, from memory.
/// </summary>
public sealed partial class TaggedPdfTests
{
    public static TheoryData<string> Names => [.. Papers.Names];

    [Theory]
    [MemberData(nameof(Names))]
    public void Pdf_OfAPaper_HasLanguageTitleAndMarks(string name)
    {
        using PdfDocument pdf = PdfDocument.Open(Papers.Pdf(name));
        PaperDocument paper = Papers.Of(name);
        DictionaryToken catalog = pdf.Structure.Catalog.CatalogDictionary;
        Assert.Equal("en", ((StringToken)catalog.Data["Lang"]).Data);
        Assert.Equal(paper.Title, pdf.Information.Title);
        Assert.Equal("true", ((BooleanToken)Inner(pdf, catalog, "MarkInfo").Data["Marked"]).Data ? "true" : "false");
        Assert.True(((BooleanToken)Inner(pdf, catalog, "ViewerPreferences").Data["DisplayDocTitle"]).Data);
        Assert.DoesNotContain("pdfuaid", System.Text.Encoding.Latin1.GetString(Papers.Pdf(name)), StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Pdf_OfAPaper_ReadsInTheOrderOfThePaper(string name)
    {
        using PdfDocument pdf = PdfDocument.Open(Papers.Pdf(name));
        TagTree tags = TagTree.Read(pdf);
        string read = Flat(string.Join(' ', tags.All.Where(t => t.Name != "Figure").Select(t => t.Own)));
        string said = Flat(string.Join(' ', Papers.Of(name).Blocks.SelectMany(PaperWordsOf.Block)));
        if (Papers.Sheet(name).Large)
        {
            said += Flat(Papers.Of(name).Notice);
        }

        Assert.Equal(said, read);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Pdf_OfAPaper_HasOneTitleAndHeadingsThatSkipNoLevel(string name)
    {
        using PdfDocument pdf = PdfDocument.Open(Papers.Pdf(name));
        int[] levels = [.. TagTree.Read(pdf).All.Where(t => Regex.IsMatch(t.Name, "^H[1-6]$")).Select(t => t.Name[1] - '0')];
        Assert.Equal(1, levels[0]);
        Assert.Single(levels, 1);
        Assert.Empty(levels.Zip(levels.Skip(1)).Where(p => p.Second > p.First + 1));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Pdf_OfAPaper_SaysWhatItsPicturesShow(string name)
    {
        using PdfDocument pdf = PdfDocument.Open(Papers.Pdf(name));
        string?[] alts = [.. TagTree.Read(pdf).All.Where(t => t.Name == "Figure").Select(t => t.Alt)];
        string[] wanted = [.. Papers.Of(name).Blocks.SelectMany(b => b switch
        {
            PaperBlock.Picture p => [p.Alt],
            PaperBlock.Photos p => p.Row.Select(r => r.Alt),
            PaperBlock.Code c => ["Code for a phone: " + c.Address],
            _ => Array.Empty<string>(),
        })];
        Assert.Equal(wanted, alts);
    }

    /// <summary>Lists hold items, items a body; tables hold rows, rows cells; a head says of what.</summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void Pdf_OfAPaper_NestsListsAndTables(string name)
    {
        using PdfDocument pdf = PdfDocument.Open(Papers.Pdf(name));
        foreach (TagTree tag in TagTree.Read(pdf).All)
        {
            string[] wanted = tag.Name switch { "L" => ["LI"], "LI" => ["Lbl", "LBody"], "Table" => ["TR"], "TR" => ["TH", "TD"], "Document" or "Div" or "NonStruct" => [], _ => ["-"] };
            Assert.True(wanted is [] || tag.Kids.All(k => wanted.Contains(k.Name)) || tag.Name == "root", $"{tag.Name} holds {string.Join(", ", tag.Kids.Select(k => k.Name))}");
            Assert.True(tag.Name != "TH" || tag.Scope is "Column" or "Row", "A head without scope.");
            Assert.True(tag.Name != "Table" || tag.Kids[0].Kids.All(k => k.Name == "TH"), "A table without heads.");
        }
    }

    /// <summary>Marks and text objects nest, and whatever is painted stands in a mark (14.6.1).</summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void Pages_OfAPaper_MarkAllThatIsPainted(string name)
    {
        using PdfDocument pdf = PdfDocument.Open(Papers.Pdf(name));
        foreach (Page page in pdf.GetPages())
        {
            Stack<string> open = new();
            foreach (IGraphicsStateOperation operation in page.Operations)
            {
                switch (operation)
                {
                    case BeginText:
                        open.Push("text");
                        break;
                    case BeginMarkedContent or BeginMarkedContentWithProperties:
                        open.Push("mark");
                        break;
                    case EndText:
                        Assert.Equal("text", open.Pop());
                        break;
                    case EndMarkedContent:
                        Assert.Equal("mark", open.Pop());
                        break;
                    default:
                        Assert.True(!Painted().IsMatch(operation.Operator) || open.Contains("mark"), $"Page {page.Number}: `{operation.Operator}` outside of every mark.");
                        break;
                }
            }

            Assert.Empty(open);
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Pages_OfAPaper_HaveTheirFontsInsideAndNoPixels(string name)
    {
        using PdfDocument pdf = PdfDocument.Open(Papers.Pdf(name));
        string file = System.Text.Encoding.Latin1.GetString(Papers.Pdf(name));
        int fonts = Regex.Count(file, "/Type/FontDescriptor");
        Assert.InRange(fonts, 2, 7);
        Assert.Equal(fonts, Regex.Count(file, "/FontFile2 "));
        foreach (Page page in pdf.GetPages())
        {
            Assert.Empty(page.GetImages());
            Assert.All(page.Letters, l => Assert.Contains("+Sightglass", l.FontName, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Pages_OfADrawing_HoldItsLines()
    {
        using PdfDocument pdf = PdfDocument.Open(Papers.Pdf("walk"));
        int lines = pdf.GetPage(1).Paths.Count;
        Assert.True(lines > 1000, $"{lines} paths");
    }

    /// <summary>Print's least is 7.5 pt, large print's 18 (the look; the American Council of the Blind's guideline, from memory), but for words on drawings.</summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void Letters_OfAPaper_AreLargeEnoughAndOnThePage(string name)
    {
        using PdfDocument pdf = PdfDocument.Open(Papers.Pdf(name));
        double least = Papers.Sheet(name).Large ? 18 : 7.5;
        foreach (Page page in pdf.GetPages())
        {
            HashSet<Letter> drawn = [.. page.GetMarkedContents().Where(m => m.Tag == "Figure").SelectMany(m => m.Letters)];
            foreach (Letter letter in page.Letters)
            {
                Assert.True(letter.PointSize >= least - 0.01 || drawn.Any(d => d.Location == letter.Location), $"Page {page.Number}: `{letter.Value}` at {letter.PointSize} pt.");
                Assert.InRange(letter.BoundingBox.Left, 0, page.Width);
                Assert.InRange(letter.BoundingBox.Right, 0, page.Width);
                Assert.InRange(letter.BoundingBox.Bottom, 0, page.Height);
            }
        }
    }

    [Fact]
    public void Write_TheSamePaperOfTheSameDay_TheSameBytes() => Assert.Equal(Papers.Pdf("system-fuel"), Papers.Write("system-fuel"));

    [Theory]
    [InlineData("lesson", 215.9, 279.4)]
    [InlineData("lesson-a4", 210, 297)]
    [InlineData("card", 105, 148)]
    [InlineData("card-folded", 279.4, 215.9)]
    [InlineData("walk", 420, 594)]
    public void Pages_OfASheet_HaveItsSize(string name, double width, double height)
    {
        using PdfDocument pdf = PdfDocument.Open(Papers.Pdf(name));
        Assert.All(pdf.GetPages(), p => Assert.Equal((width, height), (Math.Round(p.Width / 72 * 25.4, 1), Math.Round(p.Height / 72 * 25.4, 1))));
    }

    [Fact]
    public void Outline_OfALongPaper_LeadsToItsSections()
    {
        using PdfDocument pdf = PdfDocument.Open(Papers.Pdf("lesson"));
        Assert.True(pdf.TryGetBookmarks(out var bookmarks));
        string[] titles = [.. bookmarks.GetNodes().Select(n => n.Title)];
        Assert.Equal(Papers.Of("lesson").Blocks.SelectMany(PaperWordsOf.Headings).Where(h => h.Level < 3).Select(h => h.Text.Plain), titles);
    }

    private static DictionaryToken Inner(PdfDocument pdf, DictionaryToken from, string name) =>
        from.Data[name] is IndirectReferenceToken reference ? (DictionaryToken)pdf.Structure.GetObject(reference.Data).Data : (DictionaryToken)from.Data[name];

    /// <summary>Without spaces, which a line's end may swallow or add.</summary>
    private static string Flat(string text) => Spaces().Replace(text, "");

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();

    [GeneratedRegex(@"^(f|F|f\*|B|B\*|b|b\*|S|s|Tj|TJ|'|""|Do|sh)$")]
    private static partial Regex Painted();
}
