using Sightglass.Cli;

namespace Sightglass.Cli.Tests;

public sealed class DifferencesVerbTests
{
    [Fact]
    public async Task Differences_OfARoadNumber_TellsWhatHabitAndModification()
    {
        Call call = await Call.Of("differences", "--road-number", "4104");
        Assert.Equal(ExitCode.Good, call.Exit);
        foreach (string says in new[] { "1 item differs.", "SHOWS SOMETHING ELSE", "cab fuel gauge (cab)", "Habit: The same needle says something else", "M-09 cab gauge on three floats, since 2017-03-15", "qualified people decide" })
        {
            Assert.Contains(says, call.Output, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("No item that people meet differs.", "differences")]
    [InlineData("for people who know Curlew 4107", "differences", "--road-number", "4112", "--from-number", "4107")]
    [InlineData("NEW", "differences", "--book", "books/curlew", "--from", "books/smallest")]
    public async Task Differences_Between_Tells(string says, params string[] arguments)
    {
        Call call = await Call.Of(arguments);
        Assert.Equal(ExitCode.Good, call.Exit);
        Assert.Contains(says, call.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("did you mean `4104`", "differences", "--from-number", "4014")]
    [InlineData("There is no folder `nowhere`", "differences", "--from", "nowhere")]
    public async Task Differences_WrongName_SaysWhatWouldBeRight(string says, params string[] arguments)
    {
        Call call = await Call.Of(arguments);
        Assert.Equal(ExitCode.WrongUse, call.Exit);
        Assert.Contains(says, call.Error, StringComparison.Ordinal);
    }
}
