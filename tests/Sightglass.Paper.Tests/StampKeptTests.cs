using Sightglass.Cards.Tree;
using Sightglass.Paper.Document;
using Sightglass.Paper.Papers;
using Sightglass.Paper.Pdf;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace Sightglass.Paper.Tests;

/// <summary>Whoever finds one leaf of a card in a pocket finds steps on it, not a stamp alone.</summary>
public sealed class StampKeptTests
{
    public static TheoryData<string, string> Cards
    {
        get
        {
            TheoryData<string, string> data = [];
            foreach (string card in Papers.Book.CardTexts.Select(t => Path.GetFileNameWithoutExtension(t.Path)))
            {
                foreach (PaperSheet sheet in new[] { PaperSheet.A6, PaperSheet.FoldedLetter, PaperSheet.FoldedA4 })
                {
                    data.Add(card, sheet.Name);
                }
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Cards))]
    public void Leaves_OfACard_HaveStepsOnEachPanel(string card, string sheet)
    {
        PaperSheet on = PaperSheet.Find(sheet)!;
        Card read = Papers.ReadCard(card);
        for (int lines = 1; lines < 8; lines++)
        {
            CardStamp stamp = new([.. Enumerable.Range(1, lines).Select(i => $"situation {i}: tried by simulation in 512 cases on 12 road numbers: 500 ended well, 12 stopped safely, 0 failed, 0 undecided.")], "Curlew, edition 1, book 0123456789abcdef, seed 1.", new DateOnly(2026, 11, 26), "A. Instructor");
            using PdfDocument pdf = PdfDocument.Open(PdfPaper.Write(CardPaper.Of(read, stamp, Papers.Book, lines % 2 == 0 ? Papers.Address : null), on).Bytes);
            bool first = true;
            foreach (Page page in pdf.GetPages())
            {
                MarkedContentElement[] marks = [.. page.GetMarkedContents().Where(m => m.MarkedContentIdentifier >= 0 && m.Letters.Any(l => l.Value.Trim().Length > 0))];
                foreach (var panel in marks.GroupBy(m => (int)(m.Letters[0].BoundingBox.Left / page.Width * on.Panels)).OrderBy(p => p.Key))
                {
                    Assert.True(first || panel.Any(m => m.Tag == "LBody"), $"Page {page.Number}, panel {panel.Key + 1} of a stamp of {lines} lines has no step.");
                    first = false;
                }
            }
        }
    }
}
