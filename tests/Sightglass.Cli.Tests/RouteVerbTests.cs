using Sightglass.Cli;

namespace Sightglass.Cli.Tests;

public sealed class RouteVerbTests
{
    [Fact]
    public async Task Route_WalkOfTheBook_TellsStopsMetresAndWhatToArrange()
    {
        Call call = await Call.Of("route", "before departure", "--people", "10");
        Assert.Equal(ExitCode.Good, call.Exit);
        Assert.Contains("Before departure: 30 items at ", call.Output, StringComparison.Ordinal);
        Assert.Contains("No walk is shorter.", call.Output, StringComparison.Ordinal);
        Assert.Contains("Before anything is touched: wheel chock", call.Output, StringComparison.Ordinal);
        Assert.Contains("Room for 3: 4 turns.", call.Output, StringComparison.Ordinal);
        Assert.Contains("Local rules and qualified people decide", call.Output, StringComparison.Ordinal);
        Assert.Contains("As at stop ", (await Call.Of("route", "fuel")).Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("did you mean `fuel`", "route", "fuell")]
    [InlineData("did you mean `before departure`", "route", "before depature")]
    [InlineData("did you mean `cab`", "route", "fuel", "--from", "cabb")]
    [InlineData("did you mean `left side`", "route", "fuel", "--closed", "left sidee")]
    [InlineData("did you mean `conductor`", "route", "fuel", "--role", "conducter")]
    [InlineData("did you mean `local train`", "route", "fuel", "--train", "local trian")]
    [InlineData("write a speed such as `1.0 m/s`", "route", "fuel", "--pace", "fast")]
    [InlineData("--people is 1 or more", "route", "fuel", "--people", "0")]
    [InlineData("name one that has modifications with --road-number; there are 4104", "route", "changes")]
    public async Task Route_WrongNameOrValue_SaysWhatWouldBeRight(string says, params string[] arguments)
    {
        Call call = await Call.Of(arguments);
        Assert.Equal(ExitCode.WrongUse, call.Exit);
        Assert.Contains(says, call.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Route_NoSuchWalk_SaysNo()
    {
        Call call = await Call.Of("route", "fuel", "--closed", "cab steps, right");
        Assert.Equal(ExitCode.No, call.Exit);
        Assert.Contains("There is no such walk", call.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("changes", "--road-number", "4112")]
    [InlineData("empty-a-leaking-compartment")]
    [InlineData("brake-test-before-departure")]
    [InlineData("all", "--train", "local train", "--closed", "left side")]
    public async Task Route_AnyPurpose_IsFound(params string[] arguments)
    {
        Call call = await Call.Of(["route", .. arguments]);
        Assert.Equal(ExitCode.Good, call.Exit);
        Assert.Contains("walking", call.Output, StringComparison.Ordinal);
    }
}
