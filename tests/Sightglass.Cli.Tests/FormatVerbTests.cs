namespace Sightglass.Cli.Tests;

public sealed class FormatVerbTests
{
    private const string Untidy = """
        Card: Look
        For: mechanical
        Done when: the engine runs
        1.  go to fuel panel on the right side
        3. Check that the forward sight glass shows room. if not, go to step 4
        4. Wait 5 s.
        """;

    [Fact]
    public async Task Format_AnUntidyCard_WritesItInForm()
    {
        using ScratchFolder scratch = new();
        string card = scratch.Write("look.card", Untidy);
        Call call = await Call.Of("format", card, "--book", "books/curlew");
        string written = await File.ReadAllTextAsync(card);
        Assert.True(call.Exit == ExitCode.Good, call.Output + call.Error);
        Assert.Contains("1. Go to", written, StringComparison.Ordinal);
        Assert.Contains("2. Check that the forward sight glass shows room. If not, go to step 3.", written, StringComparison.Ordinal);
        Assert.EndsWith("3. Wait 5 s.\n", written, StringComparison.Ordinal);
        Assert.Equal(ExitCode.Good, (await Call.Of("format", card, "--book", "books/curlew", "--check")).Exit);
    }

    [Fact]
    public async Task Format_OnlyToCheck_WritesNothingAndSaysNo()
    {
        using ScratchFolder scratch = new();
        string card = scratch.Write("look.card", Untidy);
        Call call = await Call.Of("format", card, "--book", "books/curlew", "--check");
        Assert.Equal(ExitCode.No, call.Exit);
        Assert.Equal(Untidy, await File.ReadAllTextAsync(card));
    }

    [Fact]
    public async Task Format_TheDemo_IsInForm()
    {
        Call call = await Call.Of("format", "--check");
        Assert.True(call.Exit == ExitCode.Good, call.Output);
    }

    [Fact]
    public async Task Format_NoSuchFile_IsWrongUse() => Assert.Equal(ExitCode.WrongUse, (await Call.Of("format", "no-such.card", "--book", "books/curlew")).Exit);
}
