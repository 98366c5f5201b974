namespace Sightglass.Cli.Tests;

/// <summary>What the verb says; that it finds what was planted is the business of the trials' own tests.</summary>
public sealed class WhyVerbTests
{
    private const string Book = """
        book: Small light
        length: 20 m
        roles: { hand: { walks: 1.3 m/s } }
        places: { panel: { x: 5 m, y: 2.4 m }, desk: { x: 9 m, y: 2.4 m } }
        items:
          tank: { kind: tank, shape: prismatic, floor area: 1 m^2, depth: 1 m }
          minus: { kind: wire }
          plus: { kind: wire }
          battery: { kind: battery, from: minus, to: plus, cells: 32, capacity: 100 Ah }
          feed: { kind: wire }
          lamp wire: { kind: wire }
          breaker: { kind: breaker, from: plus, to: feed, rating: 10 A, who: [hand], places: [panel], for: Feeds the desk., normal: "On." }
          light switch: { kind: switch, usual: "on", who: [hand], places: [desk], for: Lets the lamp be lit., normal: "On." }
          light contact: { kind: contact, from: feed, to: lamp wire, closed while: on of light switch }
          desk lamp: { kind: electric lamp, from: lamp wire, to: minus, power: 40 W, rated voltage: 64 V, places: [desk], for: Lights the desk., normal: Lit. }
          feed lamp: { kind: lamp, lit when: voltage of feed - voltage of minus > 40 V, places: [panel], for: Says that the breaker gives voltage., normal: Lit. }
        facts:
          the desk is lit: { is: lit of desk lamp }
        situations:
          evening: { text: It gets dark., start: { grade: 0 % } }
        searches:
          the desk stays dark: { wanted: the desk is lit, situation: evening, within: 5 s, text: The switch is on and the lamp dark. }

        """;

    [Fact]
    public async Task Why_WithoutASearch_ListsThem()
    {
        Call call = await Of();
        Assert.Equal(ExitCode.Good, call.Exit);
        Assert.Contains("the desk stays dark: The switch is on", call.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Why_OfTheDemo_ListsThem() => Assert.Contains("it does not load: The throttle is open", (await Call.Of("why")).Output, StringComparison.Ordinal);

    /// <summary>With voltage behind the breaker it is no longer the breaker that a look could be sent to.</summary>
    [Fact]
    public async Task Why_ASearch_TellsWhereToLook()
    {
        Call call = await Of("the desk stays dark", "--seen", "feed lamp: lit");
        Assert.Equal(ExitCode.Good, call.Exit);
        foreach (string says in new[] { "Likeliest now:", "%  light switch stands off", "1. light switch: on? (desk", "qualified people decide" })
        {
            Assert.Contains(says, call.Output, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task Why_Tried_TellsHowOftenItWasFound()
    {
        Call call = await Of("the desk stays dark", "--try", "40", "--json");
        Assert.Equal(ExitCode.Good, call.Exit);
        Assert.Matches("\"cases\": 40,\\s+\"at_once\": 1", call.Output);
    }

    [Theory]
    [InlineData("did you mean `the desk stays dark`", "the desk stays drak")]
    [InlineData("the desk stays dark", "nothing at all like it")]
    [InlineData("did you mean `feed lamp`", "the desk stays dark", "--seen", "fed lamp: lit")]
    [InlineData("`feed lamp: lit` or `feed lamp: dark`", "the desk stays dark", "--seen", "feed lamp: green")]
    [InlineData("look at one of", "the desk stays dark", "--seen", "")]
    [InlineData("--faults is 1 or 2", "the desk stays dark", "--faults", "3")]
    [InlineData("no road number `1`", "the desk stays dark", "--road-number", "1")]
    public async Task Why_WrongUse_SaysWhatIsRight(string says, params string[] arguments)
    {
        Call call = await Of(arguments);
        Assert.Equal(ExitCode.WrongUse, call.Exit);
        Assert.Contains(says, call.Error, StringComparison.Ordinal);
    }

    private static async Task<Call> Of(params string[] arguments)
    {
        using ScratchFolder scratch = new();
        scratch.Write("book/book.yaml", Book);
        return await Call.Of(["why", .. arguments, "--book", scratch.At("book")]);
    }
}
