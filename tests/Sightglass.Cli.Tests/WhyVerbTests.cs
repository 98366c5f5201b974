namespace Sightglass.Cli.Tests;

/// <summary>What the verb says; that it finds what was planted is the business of the trials' own tests.</summary>
public sealed class WhyVerbTests
{
    [Fact]
    public async Task Why_WithoutASearch_ListsThem()
    {
        Call call = await Call.Of("why");
        Assert.Equal(ExitCode.Good, call.Exit);
        Assert.Contains("it does not load: The throttle is open", call.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Why_ASearch_TellsWhereToLook()
    {
        Call call = await Call.Of("why", "it does not load", "--seen", "field lamp: lit", "--seen", "parking brake lamp: lit");
        Assert.Equal(ExitCode.Good, call.Exit);
        foreach (string says in new[] { "Likeliest now:", "%  parking brake control at set", "Where to look", "qualified people decide" })
        {
            Assert.Contains(says, call.Output, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task Why_Tried_TellsHowOftenItWasFound()
    {
        Call call = await Call.Of("why", "it does not load", "--try", "40", "--json");
        Assert.Equal(ExitCode.Good, call.Exit);
        Assert.Matches("\"cases\": 40,\\s+\"at_once\": 1", call.Output);
    }

    [Theory]
    [InlineData("did you mean `it does not load`", "it does not lod")]
    [InlineData("it does not load", "nothing at all like it")]
    [InlineData("did you mean `field lamp`", "it does not load", "--seen", "feld lamp: lit")]
    [InlineData("`field lamp: lit` or `field lamp: dark`", "it does not load", "--seen", "field lamp: green")]
    [InlineData("look at one of", "it does not load", "--seen", "")]
    [InlineData("--faults is 1 or 2", "it does not load", "--faults", "3")]
    [InlineData("no road number `1`", "it does not load", "--road-number", "1")]
    public async Task Why_WrongUse_SaysWhatIsRight(string says, params string[] arguments)
    {
        Call call = await Call.Of(["why", .. arguments]);
        Assert.Equal(ExitCode.WrongUse, call.Exit);
        Assert.Contains(says, call.Error, StringComparison.Ordinal);
    }
}
