using System.Text;
using Sightglass.Book.Model;
using Sightglass.Paper.Document;
using Sightglass.Paper.Html;
using Sightglass.Paper.Papers;
using Sightglass.Paper.Pdf;
using Sightglass.Paper.Photos;
using UglyToad.PdfPig;

namespace Sightglass.Paper.Tests;

/// <summary>Photographs on papers: the machine's own, what is marked in them, words for those who cannot see them, and what cannot be read.</summary>
public sealed class PhotoTests
{
    /// <summary>A grey pixel as PNG (ISO/IEC 15948), written out here.</summary>
    private static readonly byte[] s_png = Convert.FromBase64String("iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNoAAAAggCBd81ytgAAAABJRU5ErkJggg==");

    [Fact]
    public void System_OfARoadNumber_ShowsItsOwnPhotoAndNotThatOfTheClass()
    {
        Assert.Contains(Shown("system-fuel-4107"), p => p.Name == "Fuel panel with guarded glasses, as on 4107");
        Assert.DoesNotContain(Shown("system-fuel-4107"), p => p.Name == "Fuel panel, right side");
        Assert.Contains(Shown("system-fuel"), p => p.Name == "Fuel panel, right side");
    }

    [Theory]
    [InlineData("system-fuel")]
    [InlineData("system-air")]
    [InlineData("lesson")]
    [InlineData("walk")]
    public void Photos_OfAPaper_StandOnceWithNumbersThatAreExplained(string name)
    {
        PaperPhoto[] shown = Shown(name);
        Assert.NotEmpty(shown);
        Assert.Equal(shown.Length, shown.DistinctBy(p => p.Address).Count());
        Assert.All(shown, p => Assert.Equal(Enumerable.Range(1, p.Marks.Length), p.Marks.Select(m => m.Number)));
        Assert.All(shown, p => Assert.All(p.Marks, m => Assert.Contains(m.Name, p.Caption.Plain, StringComparison.Ordinal)));
        string page = HtmlPage.Write(Papers.Of(name));
        Assert.All(shown, p => Assert.Contains($"alt=\"{System.Net.WebUtility.HtmlEncode(p.Alt)}\"", page, StringComparison.Ordinal));
        Assert.DoesNotContain("src=\"photo/", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Photo_OfPixels_IsAPictureOfThePdf()
    {
        byte[] file = Written(s_png);
        using PdfDocument pdf = PdfDocument.Open(file);
        Assert.Single(pdf.GetPages().SelectMany(p => p.GetImages()));
        Assert.Contains(TagTree.Read(pdf).All, t => t.Name == "Figure" && t.Alt == "A grey thing.");
    }

    /// <summary>A WebP of one pixel as far as its head: pages show it, the PDF says what to do.</summary>
    [Fact]
    public void Photo_AsWebP_SaysThatItCannotBePrinted()
    {
        PaperPhoto photo = new(new PhotoFile([1, 2, 3], PhotoSort.WebP, 40, 30), "photo/a.webp", "A thing", "A grey thing.", []);
        using PdfDocument pdf = PdfDocument.Open(PdfPaper.Write(Paper(photo)).Bytes);
        Assert.Contains("save it as JPEG or PNG", string.Join(' ', TagTree.Read(pdf).All.Select(t => t.Own)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("no picture")]
    [InlineData("<svg")]
    [InlineData("<html/>")]
    public void Read_WhatIsNoPicture_Null(string text) => Assert.Null(PhotoFile.Read(Encoding.UTF8.GetBytes(text)));

    [Fact]
    public void Album_OfAFileThatIsGone_LeavesItOut()
    {
        PaperAlbum album = new(Papers.Book, _ => null);
        Assert.Empty(album.Of(Papers.Book.ItemsInOrder.Select(i => i.Name), 9));
    }

    [Fact]
    public void Read_BeyondTheFolder_Null() => Assert.Null(PaperAlbum.Read(Papers.BookFolder, new Picture("a", default, "../../README.md", "")));

    private static PaperPhoto[] Shown(string name) => [.. Papers.Of(name).Blocks.OfType<PaperBlock.Photos>().SelectMany(b => b.Row)];

    private static byte[] Written(byte[] bytes) => PdfPaper.Write(Paper(new(PhotoFile.Read(bytes)!, "photo/a.png", "A thing", "A grey thing.", [new(1, "Valve", 0.1, 0.1, 0.3, 0.3)]))).Bytes;

    private static PaperDocument Paper(PaperPhoto photo) => new("A paper", PaperLook.Sheet, [new PaperBlock.Heading(1, "A paper"), new PaperBlock.Photos([photo])]);
}
