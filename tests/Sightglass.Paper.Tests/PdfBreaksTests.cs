using System.Text.RegularExpressions;
using Sightglass.Paper.Document;
using Sightglass.Paper.Pdf;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace Sightglass.Paper.Tests;

/// <summary>Where leaves end: hazards with what they are of, and no last leaf for a line or two.</summary>
public sealed partial class PdfBreaksTests
{
    private const double Room = 100;

    private static PdfPiece Line => new(10, _ => { });

    [Fact]
    public void Of_OneLineTooMany_TakesOthersAlong()
    {
        Assert.Equal([9], PdfBreaks.Of([.. Enumerable.Repeat(Line, 11)], Room));
        Assert.Equal([10], PdfBreaks.Of([.. Enumerable.Repeat(Line, 12)], Room));
        Assert.Empty(PdfBreaks.Of([.. Enumerable.Repeat(Line, 10)], Room));
    }

    [Fact]
    public void Of_OneLineTooManyBeforeAPageOfItsOwn_TakesOthersAlong() =>
        Assert.Equal([9, 11], PdfBreaks.Of([.. Enumerable.Repeat(Line, 11), Line with { NewPage = true }], Room));

    [Fact]
    public void Of_WhatStaysTogether_IsNotPartedForIt() =>
        Assert.Equal([7], PdfBreaks.Of([.. Enumerable.Repeat(Line, 7), Line with { WithNext = true }, Line with { WithNext = true }, Line, Line], Room));

    /// <summary>A heading whose hazards fill more than a leaf begins one, with as many of them as it holds.</summary>
    [Fact]
    public void Of_MoreTogetherThanALeafHolds_BeginsALeafAndFillsIt() =>
        Assert.Equal([2, 12], PdfBreaks.Of([Line, Line, .. Enumerable.Repeat(Line with { WithNext = true }, 11), Line, Line], Room));

    [Fact]
    public void Of_AnEndInTheStructure_StaysWithWhatItEnds()
    {
        PdfPiece end = new(0, _ => { });
        Assert.Equal([10], PdfBreaks.Of([.. Enumerable.Repeat(Line, 9), end, Line, Line], Room));
    }

    [Fact]
    public void Of_ALineAfterWhatFillsALeaf_StaysAlone() => Assert.Equal([1], PdfBreaks.Of([new PdfPiece(Room, _ => { }), Line], Room));

    /// <summary>However long a paper is: its last leaf, and the leaf before one that begins anew, hold four lines or more.</summary>
    [Fact]
    public void Leaf_AtTheEndOfAPaperOfAnyLength_HoldsMoreThanALineOrTwo()
    {
        for (int paragraphs = 30; paragraphs < 80; paragraphs++)
        {
            PaperBlock[] blocks = [new PaperBlock.Heading(1, "Heron"), .. Enumerable.Range(1, paragraphs).Select(i => new PaperBlock.Paragraph($"Line {i} of a paper.")), new PaperBlock.PageBreak(), new PaperBlock.Heading(2, "Sign-in sheet")];
            using PdfDocument pdf = PdfDocument.Open(PdfPaper.Write(new PaperDocument("Heron", PaperLook.Sheet, [.. blocks])).Bytes);
            Assert.InRange(Lines().Count(pdf.GetPage(pdf.NumberOfPages - 1).Text), 4, paragraphs);
        }
    }

    [Theory]
    [InlineData("lesson", true)]
    [InlineData("lesson-a4", true)]
    [InlineData("lesson-large", false)] // the hazards of a stop fill a leaf there
    public void Leaf_OfALesson_EndsWithNoHazardOrHeading(string name, bool hazards)
    {
        using PdfDocument pdf = PdfDocument.Open(Papers.Pdf(name));
        HashSet<string> keep = [.. Papers.Of(name).Blocks.Select(b => b switch { PaperBlock.Notice n when hazards => n.Text.Plain, PaperBlock.Heading h => h.Text.Plain, _ => "" }).Select(Flat).Where(t => t.Length > 0)];
        Assert.True(keep.Count > 5);
        foreach (Page page in pdf.GetPages())
        {
            string last = Flat(string.Concat(page.GetMarkedContents().Where(m => m.MarkedContentIdentifier >= 0).Select(m => string.Concat(m.Letters.Select(l => l.Value))).Last(t => t.Trim().Length > 0)));
            Assert.False(keep.Contains(last), $"Page {page.Number} of {name} ends with {last}.");
        }
    }

    private static string Flat(string text) => Spaces().Replace(text, "");

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();

    [GeneratedRegex(@"Line \d+ of")]
    private static partial Regex Lines();
}
