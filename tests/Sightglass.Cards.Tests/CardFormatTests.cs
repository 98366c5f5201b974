using Sightglass.Basics.Diagnostics;
using Sightglass.Cards.Format;
using Sightglass.Cards.Programs;
using Sightglass.Cards.Sentences;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards.Tests;

public sealed class CardFormatTests
{
    [Fact]
    public void Format_UntidyCard_IsPrintedInTheOneWay()
    {
        const string untidy = """


            card:   Empty a leaking compartment
            for: mechanical,conductor;   told:the mechanical desk
            Needs: radio,  lamp
              # Known to be hard at night.
            let C be the compartment, out of forward,centre , aft, where fuel is seen at its foot


            use when: fuel is seen at the foot of any compartment
            DONE WHEN: the engine runs. stays so for 10min
            caution:   Fuel is slippery. You can fall.
              Keep flames away
            1) walk to the fuel panel on the right side
            4. check that C’s sight glass shows room.  If not,go to step 9
            7. shut the supply valve of  each other compartment
              and then open the supply valve of C
            9. in any order:
            * open the aft drain cock
            * conductor: open the centre drain cock.
            12. tell the engineer,the mechanical desk: who  pushed it?
            """;
        const string tidy = """
            Card: Empty a leaking compartment
            For: mechanical, conductor; told: the mechanical desk
            Needs: radio, lamp
            # Known to be hard at night.
            Let C be the compartment where fuel is seen at its foot, out of forward, centre, aft.

            Use when: fuel is seen at the foot of any compartment.
            Done when: the engine runs. Stays so for 10 min.
            Caution: Fuel is slippery. You can fall. Keep flames away.
            1. Go to the fuel panel on the right side.
            2. Check that C's sight glass shows room. If not, go to step 4.
            3. Close the supply valve of each other compartment. Open the supply valve of C.
            4. In any order:
               - Open the aft drain cock.
               - Conductor: Open the centre drain cock.
            5. Tell the engineer and the mechanical desk: who pushed it?

            """;
        Assert.Equal(tidy, Formatted(untidy));
        Assert.Equal(tidy, Formatted(tidy));
    }

    [Theory]
    [InlineData("1. Wait 1 s.\n1. Go to step 1.", "1. Wait 1 s.\n1. Go to step 1.")]
    [InlineData("1. Wait 1 s.\n4. Go to step 3.", "1. Wait 1 s.\n4. Go to step 3.")]
    [InlineData("1. Wait 1 s.\n4. Go to step 4.", "1. Wait 1 s.\n2. Go to step 2.")]
    public void Format_Renumbers_OnlyWhatIsClear(string steps, string expected) => Assert.EndsWith(expected + "\n", Formatted(Cards.Head + steps));

    [Fact]
    public void Format_LinesNotUnderstood_StayAsTheyAre()
    {
        string text = Cards.Head + "1. Opne  the valve.\nwhat   is this\n  and this\nLet it be\n";
        Assert.Equal(text.Replace("Opne  the", "Opne the", StringComparison.Ordinal), Formatted(text));
    }

    [Fact]
    public void Format_SentencesMadeByAProgram_ReadAsWhatTheyMean()
    {
        Card card = Cards.Steps("Wait 1 s.");
        Sentence close = Sentence.Of(Operation.Close, ("item", new Slot.Named(new Phrase("the aft supply valve", Span.None))));
        Sentence check = Sentence.Of(
            Operation.If,
            ("condition", new Slot.Seen(new ConditionPhrase.One(Sentence.Of(Operation.Sign, ("sign", new Slot.Named(new Phrase("fuel is smelled", Span.None))))))),
            ("action", new Slot.Done([close], Span.None)));
        Card made = card with { Elements = card.Elements.Add(new CardElement.Step(2, null, [check], Span.None)) };
        string text = CardFormat.Format(made);
        Assert.EndsWith("2. If fuel is smelled, close the aft supply valve.\n", text, StringComparison.Ordinal);
        Assert.Equal(
            ProgramListing.Of(CardCompiler.Compile(made, TestBook.Book)),
            ProgramListing.Of(CardCompiler.Compile(Cards.Clean(text), TestBook.Book)));
    }

    private static string Formatted(string text)
    {
        Card? card = Cards.Read(text).Card;
        Assert.NotNull(card);
        return CardFormat.Format(card);
    }
}
