namespace Sightglass.Cli.Tests;

/// <summary>What the verb says of things that are computed, that hold others, and of which the book tells.</summary>
public sealed class FailsVerbTests
{
    private const string Book = """
        book: Small light
        in service: evening
        length: 20 m
        roles: { hand: { walks: 1.3 m/s } }
        places: { panel: { x: 5 m, y: 2.4 m } }
        items:
          tank: { kind: tank, shape: prismatic, floor area: 1 m^2, depth: 1 m }
          minus: { kind: wire }
          plus: { kind: wire }
          feed: { kind: wire }
          battery: { kind: battery, from: minus, to: plus, cells: 32, capacity: 100 Ah }
          breaker: { kind: breaker, from: plus, to: feed, rating: 10 A, who: [hand], places: [panel], for: Feeds the lamp., normal: "On." }
          desk lamp: { kind: electric lamp, from: feed, to: minus, power: 40 W, rated voltage: 64 V, places: [panel], for: Lights the desk., normal: Lit. }
          breaker panel: { places: [panel], for: Holds the breaker., normal: Shut., holds: [breaker] }
          first aid box: { places: [panel], for: For the first ten minutes., normal: Sealed., if it fails: What is missing is missed. }
          bench: { places: [panel], for: To sit on., normal: Dry. }
        facts:
          the desk is lit: { is: lit of desk lamp }
        situations:
          evening: { text: It gets dark., start: { grade: 0 % } }

        """;

    [Theory]
    [InlineData("desk lamp", "no longer: the desk is lit")]
    [InlineData("breaker panel", "breaker panel fails as one of these does: breaker.")]
    [InlineData("first aid box", "What is missing is missed. (Told by the book, not computed.)")]
    [InlineData("bench", "bench is described and not alive: nothing is worked out of it.")]
    public async Task Fails_AnItem_SaysWhatHappens(string item, string says)
    {
        Call call = await Of(item, "--for", "10 s");
        Assert.Equal(ExitCode.Good, call.Exit);
        Assert.Contains(says, call.Output.ReplaceLineEndings(" ").Replace("  ", " ", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Fails_All_CountsThem()
    {
        Call call = await Of("--for", "10 s");
        Assert.Equal(ExitCode.Good, call.Exit);
        foreach (string says in new[] { "breaker panel: as breaker fail", "first aid box: told by the book, not computed", "bench: described, not alive", "1 fail as what they hold, 1 are told by the book, 1 are described only." })
        {
            Assert.Contains(says, call.Output, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("did you mean `desk lamp`", "desk lmap")]
    [InlineData("--for is a time such as 30 s", "desk lamp", "--for", "soon")]
    [InlineData("did you mean `evening`", "desk lamp", "--in", "evenign")]
    public async Task Fails_WrongUse_SaysWhatIsRight(string says, params string[] arguments)
    {
        Call call = await Of(arguments);
        Assert.Equal(ExitCode.WrongUse, call.Exit);
        Assert.Contains(says, call.Error, StringComparison.Ordinal);
    }

    private static async Task<Call> Of(params string[] arguments)
    {
        using ScratchFolder scratch = new();
        scratch.Write("book/book.yaml", Book);
        return await Call.Of(["fails", .. arguments, "--book", scratch.At("book")]);
    }
}
