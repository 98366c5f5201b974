using System.Text;
using Sightglass.Cli;

namespace Sightglass.Cli.Tests;

/// <summary>Papers from the command line; what is in them is checked with the papers.</summary>
public sealed class PaperVerbTests
{
    [Fact]
    public async Task Paper_Card_IsTriedAndStamped()
    {
        using ScratchFolder scratch = new();
        Call call = await Call.Of("paper", "card", "drain-water", "--cases", "16", "--pdf", scratch.At("card.pdf"), "--html", scratch.At("card.html"), "--approved-by", "A. Nowak", "--address", "http://192.0.2.7:5000");
        Assert.Equal(ExitCode.Good, call.Exit);
        Assert.Contains("Drain the water from the compartments, 2 pages, a6", call.Output, StringComparison.Ordinal);
        Assert.StartsWith("%PDF-", Encoding.Latin1.GetString(await File.ReadAllBytesAsync(scratch.At("card.pdf"))), StringComparison.Ordinal);
        string page = await File.ReadAllTextAsync(scratch.At("card.html"));
        Assert.Contains("Approved by A. Nowak", page, StringComparison.Ordinal);
        Assert.Contains("http://192.0.2.7:5000/papers", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Paper_DrawingTooLargeForItsSheet_IsCutSoThatNoNameIsTooSmall()
    {
        using ScratchFolder scratch = new();
        Call call = await Call.Of("paper", "system", "brake air", "--pdf", scratch.At("air.pdf"));
        Assert.Equal(ExitCode.Good, call.Exit);
        Assert.DoesNotContain("is the least", call.Error, StringComparison.Ordinal);
    }

    /// <summary>A long machine as a row for a wall: the sheet that is named does, and where none does that is said.</summary>
    [Theory]
    [InlineData(38, true)]
    [InlineData(90, false)]
    public async Task Paper_WalkOfALongMachine_IsToldWhichSheetItNeeds(int metres, bool fits)
    {
        string book = $$"""
            book: Long
            notice: Invented.
            length: {{metres}} m
            width: 3 m
            places:
              beside it: { x: 10 m, y: 2.5 m, z: 0 m, text: The right side. }
            items:
              tank:
                kind: tank
                shape: prismatic
                floor area: 1.5 m^2
                depth: 1.5 m
                position: { x: 10 m, y: 1 m, z: 1 m }
                places: [beside it]
            """;
        using ScratchFolder scratch = new();
        scratch.Write("long/book.yaml", book);
        Call small = await Call.Of("paper", "walk", "--book", scratch.At("long"), "--size", "tabloid", "--pdf", scratch.At("small.pdf"));
        Assert.Equal(ExitCode.Good, small.Exit);
        Assert.EndsWith(fits ? "is the least that is read well; take a larger sheet: --size a2." : "no sheet here is large enough: look at it on the page.", small.Error.TrimEnd(), StringComparison.Ordinal);
        Call large = await Call.Of("paper", "walk", "--book", scratch.At("long"), "--size", "a2", "--pdf", scratch.At("large.pdf"));
        Assert.Equal(ExitCode.Good, large.Exit);
        Assert.Equal(fits, !large.Error.Contains("is the least", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("did you mean `system`", "paper", "sytem", "--pdf", "x")]
    [InlineData("Say where to", "paper", "walk")]
    [InlineData("did you mean `fuel`", "paper", "system", "feul", "--pdf", "x")]
    [InlineData("Which system? The book has", "paper", "system", "--pdf", "x")]
    [InlineData("Which card?", "paper", "card", "--pdf", "x")]
    [InlineData("it is printed on tabloid, a3, a2", "paper", "walk", "--size", "letter", "--pdf", "x")]
    [InlineData("has no large print", "paper", "walk", "--large", "--pdf", "x")]
    [InlineData("is no address", "paper", "walk", "--pdf", "x", "--address", "here")]
    [InlineData("1 or more", "paper", "lesson", "--people", "0", "--pdf", "x")]
    [InlineData("no habit `two tanks`", "paper", "differences", "two tanks", "--pdf", "x")]
    [InlineData("no road number `4105`", "paper", "differences", "--from-number", "4105", "--pdf", "x")]
    public async Task Paper_WrongUse_IsToldWhatWouldBeRight(string said, params string[] arguments)
    {
        Call call = await Call.Of(arguments);
        Assert.Equal(ExitCode.WrongUse, call.Exit);
        Assert.Contains(said, call.Error, StringComparison.Ordinal);
    }
}
