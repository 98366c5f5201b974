using Sightglass.Drawing.Diagram;
using Sightglass.Paper.Document;
using Sightglass.Paper.Papers;
using Sightglass.Paper.Pdf;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace Sightglass.Paper.Tests;

/// <summary>Names on printed drawings can be read: sizes as PdfPig, a library that nobody here wrote, finds them in the file.</summary>
public sealed class DrawingLettersTests
{
    /// <summary>Every system of the demo that has a diagram, on every sheet that people have.</summary>
    public static TheoryData<string, string, bool> Systems
    {
        get
        {
            TheoryData<string, string, bool> data = [];
            foreach (string system in Papers.Book.Systems.Keys.Where(s => !DiagramInput.Of(Papers.Book, s).Nodes.IsEmpty))
            {
                foreach (PaperSheet sheet in new[] { PaperSheet.Letter, PaperSheet.A4 })
                {
                    data.Add(system, sheet.Name, false);
                    data.Add(system, sheet.Name, true);
                }
            }

            return data;
        }
    }

    public static TheoryData<string> Names => [.. Papers.Names];

    [Theory]
    [MemberData(nameof(Systems))]
    public void System_OnASheet_HasNoNameBelowTheLeastAndLosesNone(string system, string sheet, bool large)
    {
        PaperSheet on = PaperSheet.Find(sheet)! with { Large = large };
        PdfFile file = PdfPaper.Write(SystemPaper.Of(Papers.Book, system, null, on), on);
        double least = large ? 18 : PdfFile.Readable;
        Assert.True(file.LeastLetters >= least - 0.01, $"{file.LeastLetters} pt are told.");
        using PdfDocument pdf = PdfDocument.Open(file.Bytes);
        Letter[] drawn = [.. Drawn(pdf)];
        Assert.All(drawn, l => Assert.True(l.PointSize >= least - 0.01, $"`{l.Value}` at {l.PointSize} pt."));
        string words = string.Concat(drawn.Select(l => l.Value)).Replace(" ", "", StringComparison.Ordinal);
        string[] lost = [.. DiagramLayout.Of(DiagramInput.Of(Papers.Book, system)).Labels.SelectMany(l => l.Text.Split(' ')).Where(w => !words.Contains(w, StringComparison.OrdinalIgnoreCase))];
        Assert.Empty(lost);
    }

    [Fact]
    public void System_InPieces_SaysInWhichItGoesOn()
    {
        PaperBlock.Picture[] pictures = [.. Papers.Of("system-air").Blocks.OfType<PaperBlock.Picture>()];
        Assert.True(pictures.Length > 1, "The brake air is one piece.");
        for (int i = 0; i < pictures.Length; i++)
        {
            Assert.Contains($"part {i + 1} of {pictures.Length}", pictures[i].Caption.Plain, StringComparison.Ordinal);
            Assert.True(pictures[i].Svg.Contains($">part {i + 2}<", StringComparison.Ordinal) || pictures[i].Svg.Contains($">part {i}<", StringComparison.Ordinal), $"Part {i + 1} goes on nowhere.");
        }
    }

    /// <summary>Valves that are usually closed are drawn so: the paper says that all stands as usual.</summary>
    [Fact]
    public void System_OnASheet_StandsAsUsual()
    {
        string drawn = string.Concat(Papers.Of("system-air").Blocks.OfType<PaperBlock.Picture>().Select(p => p.Svg));
        Assert.Equal("closed", Papers.Book.Items["dead engine cock"].UsualPosition);
        Assert.Matches("class=\"it part-valve closed\" data-item=\"dead engine cock\"", drawn);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Paper_OfTheDemo_HasNoNameBelowTheLeastOnItsDrawings(string name)
    {
        HashSet<string> painted = [.. Papers.Book.Silhouettes.SelectMany(s => s.Shapes).Where(s => s.Style == "lettering").Select(s => s.Text ?? "")];
        double least = Papers.Sheet(name).Large ? 18 : PdfFile.Readable;
        using PdfDocument pdf = PdfDocument.Open(Papers.Pdf(name));
        Letter[] small = [.. Drawn(pdf, Photographed(name)).Where(l => l.PointSize < least - 0.01)];
        Assert.True(small.All(l => painted.Any(p => p.Contains(l.Value, StringComparison.Ordinal))), string.Join(", ", small.Select(l => $"`{l.Value}` at {l.PointSize:0.0} pt").Distinct().Take(20)));
    }

    /// <summary>What photographs of a paper show: letters in them are as large as they happen to be.</summary>
    private static string[] Photographed(string name) => [.. Papers.Of(name).Blocks.OfType<PaperBlock.Photos>().SelectMany(b => b.Row).Select(p => p.Alt)];

    private static IEnumerable<Letter> Drawn(PdfDocument pdf, params string[] but)
    {
        HashSet<(int, int)> drawn = [.. TagTree.Read(pdf).All.Where(t => t.Name == "Figure" && !but.Contains(t.Alt)).SelectMany(t => t.Marks)];
        return pdf.GetPages().SelectMany(p => p.GetMarkedContents().Where(m => drawn.Contains((p.Number, m.MarkedContentIdentifier))).SelectMany(m => m.Letters));
    }
}
