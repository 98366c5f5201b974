namespace Sightglass.Cli.Tests;

/// <summary>What the verb says; how drills run and are judged is the business of their own tests.</summary>
public sealed class DrillVerbTests
{
    private const string Penalty = "the alerter was not answered";

    [Fact]
    public async Task Drill_WithoutAName_ListsThemByLevel()
    {
        Call call = await Call.Of("drill");
        Assert.Equal(ExitCode.Good, call.Exit);
        Assert.True(call.Output.IndexOf("For the first day", StringComparison.Ordinal) < call.Output.IndexOf("For those who are to show", StringComparison.Ordinal));
        Assert.Contains(Penalty.ToUpperInvariant(), call.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Drill_Named_PrintsWhatIsReadOut()
    {
        Call call = await Call.Of("drill", "take the machine off its train");
        Assert.Equal(ExitCode.Good, call.Exit);
        foreach (string says in new[] { "You are       mechanical", "qualifying: a hint taken is no pass", "whoever says it, everything stops", "qualified people" })
        {
            Assert.Contains(says, call.Output, StringComparison.Ordinal);
        }

        Assert.DoesNotContain("live from the far end", call.Output, StringComparison.Ordinal); // what is to be found is not read out
    }

    [Fact]
    public async Task Drill_WorkedByItsCard_IsPassedAndSaysWhy()
    {
        Call call = await Call.Of("drill", Penalty, "--card", "reset-a-penalty");
        Assert.Equal(ExitCode.Good, call.Exit);
        Assert.Contains("Passed: ", call.Output, StringComparison.Ordinal);
        Assert.Contains("Nobody came to harm", call.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Drill_LeftAlone_IsNotPassed()
    {
        Call call = await Call.Of("drill", Penalty, "--idle");
        Assert.Equal(ExitCode.No, call.Exit);
        Assert.Contains("What decided it: ", call.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Drill_Checked_TellsWhatPasses()
    {
        Call call = await Call.Of("drill", Penalty, "--check", "--cases", "2");
        Assert.Equal(ExitCode.Good, call.Exit);
        Assert.Contains("passes 2 of 2", call.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("did you mean `the alerter was not answered`", "the alerter was not answerd")]
    [InlineData("There is no card `reset-a-penalti`", Penalty, "--card", "reset-a-penalti")]
    [InlineData("The card is for mechanical, and the trainee is engineer", Penalty, "--card", "start-the-engine")]
    [InlineData("--cases wants 1 to 100,000", "--check", "--cases", "0")]
    public async Task Drill_WrongUse_SaysWhatIsRight(string says, params string[] arguments)
    {
        Call call = await Call.Of(["drill", .. arguments]);
        Assert.Equal(ExitCode.WrongUse, call.Exit);
        Assert.Contains(says, call.Error, StringComparison.Ordinal);
    }
}
