using Sightglass.Paper.Html;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Graphics;
using ZXing;
using ZXing.Common;
using ZXing.QrCode;

namespace Sightglass.Paper.Tests;

/// <summary>The code on a paper, drawn in squares, read back by ZXing, a reader that nobody here wrote.</summary>
public sealed class QrTests
{
    private const int Pixels = 240;

    [Theory]
    [InlineData("card", Papers.Address)]
    [InlineData("card-folded", Papers.Address)]
    [InlineData("walk", "http://192.0.2.7:5000/walk")]
    public void Code_OnAPaper_IsItsAddress(string name, string address)
    {
        using PdfDocument pdf = PdfDocument.Open(Papers.Pdf(name));
        PdfPath[] paths = [.. pdf.GetPages().SelectMany(p => p.GetMarkedContents()).Where(m => m.Tag == "Figure" && m.Letters.Count == 0).SelectMany(m => m.Paths).Where(IsDark)];
        byte[] grey = Draw(paths);
        RGBLuminanceSource source = new(grey, Pixels, Pixels, RGBLuminanceSource.BitmapFormat.Gray8);
        Result? read = new QRCodeReader().decode(new BinaryBitmap(new HybridBinarizer(source)), new Dictionary<DecodeHintType, object> { [DecodeHintType.TRY_HARDER] = true });
        Assert.Equal(address, read?.Text);
    }

    [Fact]
    public void Code_OnAPage_IsALinkToo() => Assert.Contains($"href=\"{Papers.Address}\"", HtmlPage.Write(Papers.Of("card")), StringComparison.Ordinal);

    /// <summary>The first is the white ground.</summary>
    private static bool IsDark(PdfPath path) => path.IsFilled && path.FillColor?.ToRGBValues() is (0, 0, 0);

    private static byte[] Draw(PdfPath[] paths)
    {
        PdfRectangle[] boxes = [.. paths.Select(p => p.GetBoundingRectangle()!.Value)];
        double left = boxes.Min(b => b.Left);
        double bottom = boxes.Min(b => b.Bottom);
        double size = boxes.Max(b => b.Top) - bottom;
        const double margin = 0.12;
        byte[] grey = new byte[Pixels * Pixels];
        for (int y = 0; y < Pixels; y++)
        {
            for (int x = 0; x < Pixels; x++)
            {
                double px = left + (((((x + 0.5) / Pixels) * (1 + (2 * margin))) - margin) * size);
                double py = bottom + (((1 - ((y + 0.5) / Pixels)) * (1 + (2 * margin))) - margin) * size;
                grey[(y * Pixels) + x] = boxes.Any(b => px >= b.Left && px <= b.Right && py >= b.Bottom && py <= b.Top) ? (byte)0 : (byte)255;
            }
        }

        return grey;
    }
}
