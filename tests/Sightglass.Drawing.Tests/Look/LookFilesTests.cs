using Sightglass.Drawing.Look;

namespace Sightglass.Drawing.Tests.Look;

public sealed class LookFilesTests
{
    [Fact]
    public void Names_TheLook_HasStylesFontsAndLicences()
    {
        Assert.Contains("tokens.css", LookFiles.Names);
        Assert.Contains("sheet.css", LookFiles.Names);
        Assert.Contains("drawing.css", LookFiles.Names);
        Assert.Equal(4, LookFiles.Names.Count(n => n.EndsWith(".woff2", StringComparison.Ordinal)));
        Assert.Equal(2, LookFiles.Names.Count(n => n.Contains("OFL", StringComparison.Ordinal)));
    }

    [Fact]
    public void Tokens_FontAddresses_AreFilesOfTheLook()
    {
        foreach (System.Text.RegularExpressions.Match m in System.Text.RegularExpressions.Regex.Matches(LookFiles.Text("tokens.css"), @"url\(([^)]+)\)"))
        {
            Assert.Contains(m.Groups[1].Value, LookFiles.Names);
        }
    }

    [Fact]
    public void Css_WithFonts_HasNoAddressesLeft()
    {
        Assert.DoesNotContain("url(fonts", LookStyle.Css(fonts: true), StringComparison.Ordinal);
        Assert.Equal(4, LookStyle.Css(fonts: true).Split("data:font/woff2").Length - 1);
        Assert.DoesNotContain("@font-face", LookStyle.Css(fonts: false), StringComparison.Ordinal);
        Assert.DoesNotContain("@import", LookStyle.ReportCss, StringComparison.Ordinal);
    }
}
