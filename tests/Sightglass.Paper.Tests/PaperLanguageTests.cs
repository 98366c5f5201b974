using Sightglass.Basics.Language;
using Sightglass.Paper.Document;
using Sightglass.Paper.Html;
using Sightglass.Paper.Papers;
using Sightglass.Paper.Pdf;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Tokens;

namespace Sightglass.Paper.Tests;

/// <summary>Papers in the language that is spoken.</summary>
public sealed class PaperLanguageTests
{
    /// <summary>
    /// Right unsaid: the program's name; an address; what an assessor wrote; letters painted on the machine; what a gauge works out, as the author wrote it.
    /// </summary>
    private static readonly string[] s_known =
    [
        "Sightglass", "http://192.0.2.7:5000/walk", DebriefRuns.Facts.Trainee, DebriefRuns.Facts.Agreement, .. DebriefRuns.Facts.Coached, .. DebriefRuns.Facts.Observed.SelectMany(o => new[] { PaperWords.Capital(o.Item), o.Saw }),
        .. Papers.Book.Silhouettes.SelectMany(s => s.Shapes).Where(s => s.Style == "lettering").Select(s => s.Text ?? ""),
        .. Papers.Book.RoadNumbers.Keys.SelectMany(n => Papers.Book.For(n).ItemsInOrder).Concat(Papers.Book.ItemsInOrder).Select(i => i.Reading?.Formula).OfType<string>(),
    ];

    public static TheoryData<string> Names => ["card", "lesson", "system-fuel", "system-air", "differences", "habits", "walk", "debrief"];

    [Theory]
    [MemberData(nameof(Names))]
    public void Paper_Marked_SaysAllThatStandsInIt(string name)
    {
        using (Unsaid.Tongue(Papers.Book).Speak())
        {
            PaperDocument paper = Papers.Of(name);
            if (name == "debrief")
            {
                paper = paper with { Blocks = [.. paper.Blocks.Where(b => b is not PaperBlock.Picture)] }; // its words are broken into lines and cut to their room
            }

            string[] ofCard = name == "card" ? [.. CardTexts(paper)] : [];
            IEnumerable<string> heads = [paper.Title, paper.Machine, paper.Notice, .. paper.Blocks.OfType<PaperBlock.Picture>().Select(p => p.Alt), .. paper.Blocks.OfType<PaperBlock.Photos>().SelectMany(p => p.Row).Select(p => p.Alt)];
            string left = string.Join('\n', Unsaid.Texts(heads, [.. s_known, .. ofCard, "4104", "4112"]).Concat(name.StartsWith("system", StringComparison.Ordinal) ? Unsaid.InDiagram(HtmlPaper.Write(paper), Papers.Book, s_known) : Unsaid.In(HtmlPaper.Write(paper), [.. s_known, .. ofCard])));
            Assert.True(left.Length == 0, left);
        }
    }

    /// <summary>ISO 32000-1, 14.9.2: the language of a document is said in its catalog (from memory).</summary>
    [Fact]
    public void Pdf_InSpanish_SaysItsLanguageAndIsReadBack()
    {
        using (Tongue.Spanish.Speak())
        {
            PaperDocument paper = Papers.Of("system-fuel");
            byte[] file = PdfPaper.Write(paper, Papers.Sheet("system-fuel")).Bytes;
            using PdfDocument pdf = PdfDocument.Open(file);
            Assert.Equal("es", ((StringToken)pdf.Structure.Catalog.CatalogDictionary.Data["Lang"]).Data);
            string read = string.Join(' ', TagTree.Read(pdf).All.Select(t => t.Own));
            Assert.Contains("Un sistema en una hoja", read, StringComparison.Ordinal);
            Assert.Contains("La manija de una válvula está en línea cuando está abierta", read, StringComparison.Ordinal);
            Assert.Contains("lang=\"es\"", HtmlPage.Write(paper), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Lesson_InSpanish_HasNoEnglishOfTheProgram()
    {
        using (Tongue.Spanish.Speak())
        {
            string read = string.Join(' ', Papers.Of("lesson").Blocks.SelectMany(PaperWordsOf.Block));
            Assert.Contains("Una lección alrededor de la máquina", read, StringComparison.Ordinal);
            Assert.Contains("2 grupos", read, StringComparison.Ordinal);
            Assert.DoesNotContain("Station 1", read, StringComparison.Ordinal);
            Assert.DoesNotContain("each in turn", read, StringComparison.Ordinal);
        }
    }

    /// <summary>A card's own words are what was tried; in another language it is another card.</summary>
    private static IEnumerable<string> CardTexts(PaperDocument paper) =>
        paper.Blocks.SelectMany(b => b switch
        {
            PaperBlock.Heading { Level: 1 } h => [h.Text.Plain],
            PaperBlock.Paragraph { Sort: ParagraphSort.Head } p => p.Text.Runs.Select(r => r.Text.Trim()),
            PaperBlock.Steps s => s.Lines.Select(l => l.Text.Plain),
            PaperBlock.Box box => box.Blocks.OfType<PaperBlock.Paragraph>().Select(p => p.Text.Plain).Where(t => t.StartsWith("leaking compartment: tried", StringComparison.Ordinal) || t.StartsWith("Curlew, edition", StringComparison.Ordinal)),
            PaperBlock.Code c => [c.Address],
            _ => Array.Empty<string>(),
        }).Append(paper.Title);
}
