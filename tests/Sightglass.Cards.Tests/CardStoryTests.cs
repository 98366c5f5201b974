using Sightglass.Cards.Programs;
using Sightglass.Cards.Sentences;
using Sightglass.Cards.Story;

namespace Sightglass.Cards.Tests;

public sealed class CardStoryTests
{
    [Theory]
    [InlineData("Go to the fuel panel on the right side.", "You went to the fuel panel on the right side.")]
    [InlineData("Close the aft return valve.", "You closed the aft return valve.")]
    [InlineData("Turn the throttle to notch 1.", "You turned the throttle to notch 1.")]
    [InlineData("Push the emergency fuel cut-off on the right side once.", "You pushed the emergency fuel cut-off on the right side.")]
    [InlineData("Engineer: Start the engine.", "The engineer started the engine.")]
    [InlineData("Wait 90 s.", "You waited 90 s.")]
    [InlineData("Wait 10 min.", "You waited 10 min.")]
    [InlineData("Read the cab fuel gauge as P1.", "You read the cab fuel gauge.")]
    [InlineData("Tell the engineer, the conductor and the mechanical desk: who pushed it?", "You told the engineer, the conductor and the mechanical desk: who pushed it?")]
    [InlineData("Hold the throttle at notch 8 for 10 s.", "You held the throttle at notch 8 for 10 s.")]
    [InlineData("Lock and tag the fuel pump switch.", "You locked and tagged the fuel pump switch.")]
    [InlineData("Chock the front wheel.", "You chocked the front wheel.")]
    [InlineData("Remove the chock from the front wheel.", "You removed the chock from the front wheel.")]
    [InlineData("Set the blue signals at the cab.", "You set the blue signals at the cab.")]
    [InlineData("Connect the tail hose to the front wheel.", "You connected the tail hose to the front wheel.")]
    [InlineData("Disconnect the tail hose.", "You disconnected the tail hose.")]
    [InlineData("Stop: call for help.", "You stopped there.")]
    [InlineData("Turn the fuel pump switch off.", "You turned the fuel pump switch off.")]
    [InlineData("Turn the throttle to notch 1 until the cab fuel gauge shows low, at most 5 s. If not, stop.", "You turned the throttle to notch 1.")]
    [InlineData("Walk from the fuel panel to tank aft on the right side.", "You went to the fuel panel on the right side.")]
    [InlineData("Look for fuel at the foot of the aft compartment at the fuel panel on the right side.", "You looked at the fuel panel on the right side, and fuel is seen at the foot of the aft compartment.")]
    public void Tell_Operation_IsASentenceOfThePast(string step, string expected) => Assert.Equal(expected, Story(step).Tell(0));

    [Theory]
    [InlineData("lit", true, "You checked, and it was so: the low fuel lamp is lit.")]
    [InlineData("dark", false, "You checked, and it was not so: the low fuel lamp is dark.")]
    public void Tell_Lamp_SaysHowItWasSeen(string word, bool held, string expected) => Assert.Equal(expected, Story($"Check that the low fuel lamp is {word}. If not, stop.").Tell(0, held));

    [Theory]
    [InlineData(true, "You checked, and it was so: the aft sight glass on the right side shows room (it showed 30 cm).")]
    [InlineData(false, "You checked, and it was not so: the aft sight glass on the right side shows room (it showed 30 cm) and went on to step 3.")]
    public void Tell_Check_SaysWhyTheBranchWent(bool held, string expected) => Assert.Equal(
        expected,
        Story("Check that the aft sight glass, right shows room. If not, go to step 3.", "Wait 1 s.", "Wait 2 s.").Tell(0, held, shown: "30 cm"));

    [Fact]
    public void Tell_WaitInVain_SaysHowLongAndWhereItWent() => Assert.Equal(
        "You waited 5 min, and it did not come to be that no fuel is smelled and went to the end.",
        Story("Wait until no fuel is smelled, at most 5 min. If not, go to the end.", "Wait 1 s.").Tell(0, held: false));

    [Theory]
    [InlineData(Reply.Done, "You asked the engineer to turn the throttle to notch 1, and heard that it was done.")]
    [InlineData(Reply.None, "You asked the engineer to turn the throttle to notch 1, and no answer came in time and went to the end.")]
    [InlineData(Reply.Stuck, "You asked the engineer to turn the throttle to notch 1, and the answer was no: it does not move and went to the end.")]
    public void Tell_AskTo_SaysWhatCameBack(Reply reply, string expected) => Assert.Equal(
        expected,
        Story("Ask the engineer to turn the throttle to notch 1. Wait for the answer, at most 1 min. If not, go to the end.", "Wait 1 s.").Tell(0, reply == Reply.Done, reply: reply));

    [Fact]
    public void Tell_EveryReplyButYes_HasWords() =>
        Assert.Equal(Enum.GetValues<Reply>().Except([Reply.Done]).Order(), EnglishForms.Language.Small.Replies.Keys.Order());

    [Fact]
    public void Tell_ChoiceOfSides_NamesTheOneAtThePlace()
    {
        CardStory story = Story("Check that the aft sight glass shows room. If not, stop.");
        Assert.Contains("aft sight glass on the right side", story.Tell(0, place: TestBook.PanelRight), StringComparison.Ordinal);
        Assert.Contains("aft sight glass on the left side", story.Tell(0, place: TestBook.PanelLeft), StringComparison.Ordinal);
    }

    [Fact]
    public void Tell_NumbersWrittenDown_AreSaidInTheInstrumentsUnitAndDigits()
    {
        CardStory story = Story("Read the aft sight glass, right as P1.", "Tell the engineer: {P1}, twice {P1 * 2}.");
        Assert.Equal("You told the engineer: 31\u202Fcm, twice 63\u202Fcm.", story.Tell(1, written: [0.3141]));
    }

    [Theory]
    [InlineData("the aft sight glass, right shows at least 5 cm", "the aft sight glass on the right side shows at least 5 cm")]
    [InlineData("the aft sight glass, right does not show low", "the aft sight glass on the right side does not show low")]
    [InlineData("the aft supply valve is not open", "the aft supply valve is not open")]
    [InlineData("no fuel is smelled", "no fuel is smelled")]
    [InlineData("the cab fuel gauge shows under 20 % or fuel is smelled", "the cab fuel gauge shows less than 20 % or fuel is smelled")]
    public void Say_Condition_InTheWordsOfTheTable(string written, string said)
    {
        CardProgram program = CardCompiler.Compile(Cards.Steps($"Check that {written}. If not, stop."), TestBook.Book);
        Assert.Equal(said, new ConditionWords(EnglishForms.Language).Say(Assert.IsType<CardOp.Check>(program.Ops[0]).Condition));
    }

    [Fact]
    public void Tell_EveryOperationOfTheLeakCard_HasWords()
    {
        CardProgram program = CardCompiler.Compile(Cards.Clean(Cards.Leak), TestBook.Book, "aft");
        CardStory story = new(program, EnglishForms.Language);
        Assert.All(Enumerable.Range(0, program.Ops.Length - 1), i => Assert.NotEqual("", story.Tell(i)));
        Assert.Equal("", story.Tell(program.Ops.Length - 1));
    }

    private static CardStory Story(params string[] steps) => new(CardCompiler.Compile(Cards.Steps(steps), TestBook.Book), EnglishForms.Language);
}
