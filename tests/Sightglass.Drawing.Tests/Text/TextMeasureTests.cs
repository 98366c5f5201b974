using Sightglass.Drawing.Text;

namespace Sightglass.Drawing.Tests.Text;

public sealed class TextMeasureTests
{
    // Widths measured by a browser (Chromium, 18 px text of the fonts in Look/fonts, kerning on), scaled to 100 px.
    [Theory]
    [MemberData(nameof(Measured))]
    public void Width_Words_AgreesWithABrowserWithinTwoPercent(string text, TextFace face, double browser) =>
        Assert.InRange(TextMeasure.Width(text, face, 100) / browser, 0.995, 1.02);

    public static TheoryData<string, TextFace, double> Measured => new()
    {
        { "Emergency fuel cut-off", TextFace.Sans500, 967.1 },
        { "Supply and return valves, forward", TextFace.Sans500, 1370.4 },
        { "27-point communication, rear", TextFace.Sans500, 1234.5 },
        { "1 765 L", TextFace.Sans500, 285.9 },
        { "Head-end power room", TextFace.Sans600, 925.0 },
        { "Sight glass, aft, left", TextFace.Sans400, 790.8 },
        { "Supply and return valves, forward", TextFace.Serif400, 1540.7 },
        { "Emergency fuel cut-off", TextFace.SerifItalic400, 937.2 },
        { "27-point communication, rear", TextFace.Serif600, 1390.0 },
    };

    [Fact]
    public void Fit_TooLong_EndsInAnEllipsisAndFits()
    {
        string text = TextMeasure.Fit("Emergency fuel cut-off", TextFace.Sans500, 13, 60);
        Assert.EndsWith("…", text);
        Assert.True(TextMeasure.Width(text, TextFace.Sans500, 13) <= 60);
    }

    [Fact]
    public void Wrap_Words_StayWholeAndInOrder()
    {
        IReadOnlyList<string> lines = TextMeasure.Wrap("one two three four five six", TextFace.Sans400, 13, 50);
        Assert.True(lines.Count > 1);
        Assert.Equal("one two three four five six", string.Join(' ', lines));
    }
}
