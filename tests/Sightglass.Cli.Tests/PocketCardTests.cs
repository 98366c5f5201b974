using System.Net;
using System.Text.RegularExpressions;
using Sightglass.Cli;

namespace Sightglass.Cli.Tests;

/// <summary>The pocket card is the text that was tried, and its stamp says what that came to.</summary>
public sealed class PocketCardTests
{
    [Fact]
    public async Task Pocket_CardThatHolds_TheTextWithItsStamp()
    {
        using ScratchFolder scratch = new();
        Call call = await Call.Of("try", "drain-water", "--cases", "32", "--pocket", scratch.At("pocket.html"), "--approved-by", "A. Instructor <x>");
        Assert.Equal(ExitCode.Good, call.Exit);
        string page = await File.ReadAllTextAsync(scratch.At("pocket.html"));
        string said = WebUtility.HtmlDecode(Regex.Replace(page[page.IndexOf("<body", StringComparison.Ordinal)..], "<[^>]+>", " "));
        string plain = Regex.Replace(said, @"\s+", " ");
        foreach (string line in await File.ReadAllLinesAsync(Path.Combine(Call.Root, "books/curlew/cards/drain-water.card")))
        {
            string words = Regex.Replace(Regex.Replace(line.Replace("{", "").Replace("}", ""), @"^(\s*\d+\.|\s*-|Card:|Caution:|Warning:|Danger:|Notice:|#.*)", ""), @"\s+", " ").Trim();
            Assert.Contains(words, plain, StringComparison.Ordinal);
        }

        Assert.Contains("Approved by A. Instructor <x>, ", plain, StringComparison.Ordinal);
        Assert.Matches(@"Tried by simulation in 32 cases .*0 failed", plain);
        Assert.Matches(@"book [0-9a-f]{16}, seed 1", plain);
        Assert.Contains("size:105mm 148mm", page, StringComparison.Ordinal);
    }

    /// <summary>Nobody can approve a card that fails; the paper says so.</summary>
    [Fact]
    public async Task Pocket_CardThatFails_IsADraftWhoeverApproves()
    {
        using ScratchFolder scratch = new();
        Call call = await Call.Of("try", "empty-a-leaking-compartment-draft", "-s", "leaking compartment", "--cases", "64", "--pocket", scratch.At("pocket.html"), "--approved-by", "A. Instructor");
        Assert.Equal(ExitCode.No, call.Exit);
        Assert.Contains("Not approved: it fails in ", call.Error, StringComparison.Ordinal);
        string page = await File.ReadAllTextAsync(scratch.At("pocket.html"));
        Assert.Contains("DRAFT of ", page, StringComparison.Ordinal);
        Assert.DoesNotContain("A. Instructor", page, StringComparison.Ordinal);
    }
}
