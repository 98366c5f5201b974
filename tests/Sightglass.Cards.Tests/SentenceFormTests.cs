using Sightglass.Basics.Diagnostics;
using Sightglass.Cards.Sentences;

namespace Sightglass.Cards.Tests;

/// <summary>Each sentence of the language with the operations it becomes.</summary>
public sealed class SentenceFormTests
{
    [Theory]
    [InlineData("Go to the fuel panel on the right side.", "go fuel panel, right")]
    [InlineData("Walk to the cab", "go cab")]
    [InlineData("Open the aft supply valve.", "set aft supply valve = open")]
    [InlineData("Close aft supply valve", "set aft supply valve = closed")]
    [InlineData("shut the aft supply valve.", "set aft supply valve = closed")]
    [InlineData("Turn the throttle to notch 1.", "set throttle = notch 1")]
    [InlineData("Set the throttle to idle.", "set throttle = idle")]
    [InlineData("Turn the fuel pump switch on.", "set fuel pump switch = on")]
    [InlineData("Turn off the fuel pump switch.", "set fuel pump switch = off")]
    [InlineData("Push the emergency fuel cut-off, right once.", "set emergency fuel cut-off, right = pushed")]
    [InlineData("Press the emergency fuel cut-off on the left side.", "set emergency fuel cut-off, left = pushed")]
    [InlineData("Start the engine.", "set engine = running")]
    [InlineData("Stop the engine.", "set engine = stopped")]
    [InlineData("Hold the throttle at notch 8 for 10 s.", "hold throttle = notch 8 for 10 s")]
    [InlineData("Read the cab fuel gauge as P1.", "read cab fuel gauge -> P1")]
    [InlineData("Wait 2 min.", "wait 120 s")]
    [InlineData("Wait for 60s.", "wait 60 s")]
    [InlineData("Look for fuel at the foot of the aft compartment.", "look fuel is seen at the foot of the aft compartment else 1")]
    [InlineData("Look whether fuel is smelled.", "look fuel is smelled else 1")]
    [InlineData("Look for fuel at the foot of the aft compartment at the fuel panel on the left side.", "look fuel is seen at the foot of the aft compartment at fuel panel, left else 1")]
    [InlineData("Push the emergency fuel cut-off on the left side once.", "set emergency fuel cut-off, left = pushed")]
    [InlineData("Tell the engineer, the conductor and the mechanical desk: fuel on the ground. Stand back.", "tell engineer, conductor, mechanical desk: fuel on the ground. Stand back")]
    [InlineData("Give back protection for going between.", "give back going between")]
    [InlineData("Lock and tag the fuel pump switch.", "lock and tag fuel pump switch")]
    [InlineData("Remove the lock and tag from the fuel pump switch.", "remove lock and tag at fuel pump switch")]
    [InlineData("Chock the front wheel.", "set wheel chock at front wheel")]
    [InlineData("Remove the chock from the front wheel.", "remove wheel chock at front wheel")]
    [InlineData("Set the blue signals at the cab.", "set blue signals at cab")]
    [InlineData("Remove the blue signals at the fuel panel on the right side.", "remove blue signals at fuel panel, right")]
    [InlineData("Connect the tail hose to the front wheel.", "set tail hose = connected")]
    [InlineData("Disconnect the tail hose.", "set tail hose = disconnected")]
    [InlineData("Stop: call for help.", "stop: call for help")]
    [InlineData("Stop.", "stop: Test: stopped at step 1")]
    [InlineData("Engineer: Turn the throttle to idle.", "engineer: set throttle = idle")]
    public void Compile_OneSentence_OneOperation(string sentence, string expected) => Assert.Equal($"0: [1] {expected}\n1: [1] done", Cards.Ops(sentence));

    [Theory]
    [InlineData("Check that the cab fuel gauge shows low. If not, go to step 2.", "0: [1] check cab fuel gauge low (0..0.2) else 1")]
    [InlineData("Check that the cab fuel gauge shows low. If not, go to the end.", "0: [1] check cab fuel gauge low (0..0.2) else 2")]
    [InlineData("Wait until the cab fuel gauge shows low, at most 5 min.", "0: [1] wait until cab fuel gauge low (0..0.2) at most 300 s else 1")]
    [InlineData("Wait until the cab fuel gauge shows low, at most 5 min. If not, go to step 2.", "0: [1] wait until cab fuel gauge low (0..0.2) at most 300 s else 1")]
    public void Compile_Looking_GoesOnOrElsewhere(string sentence, string expected) =>
        Assert.Equal($"{expected}\n1: [2] wait 1 s\n2: [2] done", Cards.Ops(sentence, "Wait 1 s."));

    [Fact]
    public void Compile_IfNotStopAndTell_TellsAndStopsBehindTheLastStep() => Assert.Equal(
        "0: [1] check fuel pressure gauge >= 275790.292 else 2\n1: [1] done\n2: [1] tell mechanical desk: no pressure\n3: [1] stop: no pressure",
        Cards.Ops("Check that the fuel pressure gauge shows at least 40 psi. If not, stop, and tell the mechanical desk: no pressure."));

    [Fact]
    public void Compile_IfNotAction_DoesItAndComesBack() => Assert.Equal(
        "0: [1] check aft supply valve = open else 3\n1: [2] wait 5 s\n2: [2] done\n3: [1] set aft supply valve = open\n4: [1] jump 1",
        Cards.Ops("Check that the aft supply valve is open. If not, open the aft supply valve.", "Wait 5 s."));

    [Fact]
    public void Compile_If_SkipsItsAction() => Assert.Equal(
        "0: [1] if sign 'fuel is smelled' else 2\n1: [1] set aft supply valve = closed\n2: [1] done",
        Cards.Ops("If fuel is smelled, close the aft supply valve."));

    [Fact]
    public void Compile_AskProtection_WaitsForTheAnswer() => Assert.Equal(
        "0: [1] ask engineer for going between at most 300 s else 3\n1: [2] give back going between\n2: [2] done\n3: [1] stop: no answer",
        Cards.Ops("Ask the engineer for protection for going between. Wait for the answer, at most 5 min. If not, stop: no answer.", "Give back protection."));

    [Fact]
    public void Compile_AskBareProtection_MeansTheOneOfThatRole() => Assert.StartsWith(
        "0: [1] ask engineer for going between at most 60 s",
        Cards.Ops("Ask the engineer for protection. Wait for the answer, at most 1 min. If not, stop."));

    [Fact]
    public void Compile_AskPermission_NamesTheControl() => Assert.StartsWith(
        "0: [1] ask engineer for permission: engine at most 300 s else 2",
        Cards.Ops("Ask the engineer for permission to operate the engine. Wait for the answer, at most 5 min. If not, stop."));

    [Theory]
    [InlineData("turn the throttle to notch 1", "throttle = notch 1")]
    [InlineData("set the throttle to idle", "throttle = idle")]
    [InlineData("turn the fuel pump switch off", "fuel pump switch = off")]
    [InlineData("open the aft supply valve", "aft supply valve = open")]
    [InlineData("stop the engine", "engine = stopped")]
    [InlineData("push the emergency fuel cut-off, right once", "emergency fuel cut-off, right = pushed")]
    [InlineData("connect the tail hose to the front wheel", "tail hose = connected")]
    public void Compile_AskTo_KeepsWhatIsAskedApart(string request, string expected) => Assert.Equal(
        $"0: [1] ask engineer to set {expected} at most 300 s else 3\n1: [2] wait 5 s\n2: [2] done\n3: [1] stop: not done",
        Cards.Ops($"Ask the engineer to {request}. Wait for the answer, at most 5 min. If not, stop: not done.", "Wait 5 s."));

    [Theory]
    [InlineData("C020", "Ask the engineer to open the aft suply valve. Wait for the answer, at most 1 min. If not, stop.")]
    [InlineData("C026", "Ask the engineer to turn the throttle to notch 9. Wait for the answer, at most 1 min. If not, stop.")]
    [InlineData("C022", "Ask the king to turn the throttle to idle. Wait for the answer, at most 1 min. If not, stop.")]
    [InlineData("C040", "Ask the engineer to turn the throttle to idle. Wait for the answer, at most 1 min.")]
    [InlineData("C041", "Ask the engineer to turn the throttle to idle. If not, stop.")]
    [InlineData("C004", "Ask the engineer to dance. Wait for the answer, at most 1 min. If not, stop.")]
    [InlineData("C066", "Ask the engineer to turn the throttle to idle until the cab fuel gauge shows low, at most 5 s. Wait for the answer, at most 1 min. If not, stop.")]
    [InlineData("C066", "Ask the engineer to wait 5 s. Wait for the answer, at most 1 min. If not, stop.")]
    [InlineData("C066", "Ask the engineer to hold the throttle at idle for 5 s. Wait for the answer, at most 1 min. If not, stop.")]
    [InlineData("C067", "Ask the mechanical to turn the throttle to idle. Wait for the answer, at most 1 min. If not, stop.")]
    public void Read_AskToWhatCannotBe_HasItsCode(string code, string step) => Assert.Equal([code], Cards.Codes(Cards.WithHead(step)).Distinct());

    [Fact]
    public void Read_AskToOperateSeveral_IsRefused() => Assert.Contains(
        "C031",
        Cards.Codes(Cards.Head + "Let C be the compartment, one of forward, centre, aft.\n1. Ask the engineer to open the supply valve of each compartment. Wait for the answer, at most 1 min. If not, stop."));

    [Fact]
    public void Compile_HoldUntil_HasALimit() => Assert.Equal(
        "0: [1] hold throttle = notch 8 for 20 s until cab fuel gauge low (0..0.2) else 2\n1: [1] done\n2: [1] stop: it stays",
        Cards.Ops("Hold the throttle at notch 8 until the cab fuel gauge shows low, at most 20 s. If not, stop: it stays."));

    [Theory]
    [InlineData("In any order:\n   - Open the aft drain cock.\n   - Open the centre drain cock.")]
    [InlineData("In any order:\n  # a comment\n\n  a. Open the aft drain cock.\n  b. Open the centre drain cock.")]
    [InlineData("In any order: Open the aft drain cock. Open the centre drain cock.")]
    public void Compile_InAnyOrder_DoesEach(string step) => Assert.Equal(
        "0: [1] set aft drain cock = open\n1: [1] set centre drain cock = open\n2: [1] done", Cards.Ops(step));

    [Fact]
    public void Compile_AtTheSameTime_GivesEachPersonAWay() => Assert.Equal(
        """
        0: [1] together 1, 3 then 5
        1: [1] engineer: go cab
        2: [1] engineer: join
        3: [1] conductor: wait until not sign 'fuel is smelled' at most 60 s else 7
        4: [1] conductor: join
        5: [2] wait 1 s
        6: [2] done
        7: [1] conductor: stop: fuel
        """,
        Cards.Ops("At the same time:\n   - Engineer: Go to the cab.\n   - Conductor: Wait until no fuel is smelled, at most 1 min. If not, stop: fuel.", "Wait 1 s."));

    [Theory]
    [InlineData("C057", "At the same time: Wait 5 s. Wait 6 s.")]
    [InlineData("C057", "At the same time:\n   - Engineer: Wait 5 s.\n   - Engineer: Wait 6 s.")]
    [InlineData("C057", "At the same time:\n   - Engineer: Wait 5 s.\n   - Wait 6 s.")]
    [InlineData("C058", "At the same time:\n   - Engineer: Go to the end.\n   - Conductor: Wait 6 s.")]
    [InlineData("C058", "At the same time:\n   - Engineer: Check that no fuel is smelled. If not, go to the end.\n   - Conductor: Wait 6 s.")]
    [InlineData("C041", "Hold the throttle at notch 8 until the cab fuel gauge shows low. If not, stop.")]
    [InlineData("C041", "Turn the throttle to notch 8 until the cab fuel gauge shows low. If not, stop.")]
    [InlineData("C030", "Walk from the fuel panel to the cab.")]
    [InlineData("C068", "Look for fuel at the foot of the aft compartment at the cab.")]
    [InlineData("C023", "Look for smoke at the cab.")]
    [InlineData("C074", "Check that the throttle is dark. If not, stop.")]
    [InlineData("C074", "Check that the cab fuel gauge is lit. If not, stop.")]
    [InlineData("C071", "For each wagon from the first to the last:\n   - Wait 5 s.")]
    [InlineData("C072", "For each car from the first to car 4:\n   - Wait 5 s.")]
    [InlineData("C073", "For each car:\n   - Go on with the next compartment.")]
    [InlineData("C010", "For each car:")]
    [InlineData("C010", "If fuel is smelled, for each car:")]
    [InlineData("C054", "Do card \"There\" with aft.")]
    [InlineData("C059", "Chock the throttle.")]
    [InlineData("C059", "Set the blue signals at tank aft, right.")]
    [InlineData("C059", "Set going between at the cab.")]
    [InlineData("C059", "Connect the tail hose to the throttle.")]
    public void Read_WhatCannotBe_HasItsCode(string code, string step) => Assert.Contains(code, Cards.Codes(Cards.WithHead(step)));

    [Theory]
    [InlineData("the low fuel lamp is lit", "low fuel lamp lit")]
    [InlineData("the low fuel lamp is dark", "not low fuel lamp lit")]
    [InlineData("the low fuel lamp is lit and the throttle is not idle", "(low fuel lamp lit and not throttle = idle)")]
    [InlineData("the marker switch is lit", "marker switch = lit")]
    [InlineData("the marker switch is dark", "marker switch = dark")]
    public void Compile_LitOrDark_LooksAtTheLampOrThePosition(string condition, string expected) =>
        Assert.Equal($"0: [1] check {expected} else 2\n1: [1] done\n2: [1] stop: no", Cards.Ops($"Check that {condition}. If not, stop: no."));

    [Fact]
    public void Lint_LampOutOfReach_IsTold()
    {
        DiagnosticList found = [];
        CardLint.Check(Cards.Steps("Go to the fuel panel on the right side.", "Check that the low fuel lamp is dark. If not, stop."), TestBook.Book, found);
        Assert.Contains(found, d => d.Code == "L020");
    }

    [Fact]
    public void Compile_OneOf_DoesTheFirstThatHolds() => Assert.Equal(
        """
        0: [1] if cab fuel gauge low (0..0.2) else 3
        1: [1] set aft drain cock = open
        2: [1] jump 6
        3: [1] if sign 'fuel is smelled' else 5
        4: [1] stop: fuel
        5: [1] set aft drain cock = closed
        6: [1] done
        """,
        Cards.Ops("Do one of:\n   - If the cab fuel gauge shows low, open the aft drain cock.\n   - If fuel is smelled, stop: fuel.\n   - Close the aft drain cock."));

    [Fact]
    public void Compile_Repeat_GoesBackWithACounter() => Assert.Equal(
        """
        0: [1] set aft drain cock = open
        1: [2] set aft drain cock = closed
        2: [3] repeat until not sign 'fuel is smelled' at most 3 times every 120 s back 0 counter 0 else 4
        3: [3] done
        4: [3] stop: water
        """,
        Cards.Ops("Open the aft drain cock.", "Close the aft drain cock.", "Repeat steps 1 to 2 until no fuel is smelled, at most 3 times, every 2 min. If not, stop: water."));

    [Fact]
    public void Compile_Calculation_ComparesNumbersWrittenDown() => Assert.Equal(
        "0: [1] read cab fuel gauge -> P1\n1: [2] read cab fuel gauge -> P2\n2: [3] check (P1 − P2) <= 0.05 else 4\n3: [3] done\n4: [3] stop: leakage {P1 − P2 in %}",
        Cards.Ops("Read the cab fuel gauge as P1.", "Read the cab fuel gauge as P2.", "Check that P1 − P2 is at most 5 %. If not, stop: leakage {P1 − P2}."));

    [Theory]
    [InlineData("Walk from the fuel panel to tank aft on the right side.", "fuel panel, right", "tank aft, right")]
    [InlineData("Walk from the cab to the fuel panel on the left side.", "cab", "fuel panel, left")]
    [InlineData("Go from the fuel panel on the left side to tank aft on the right side.", "fuel panel, left", "tank aft, right")]
    public void Compile_WalkFrom_GoesToBothEnds(string step, string from, string to) => Assert.Equal($"0: [1] go {from}\n1: [1] go {to}\n2: [1] done", Cards.Ops(step));

    [Fact]
    public void Compile_TurnUntil_LeavesItThere() => Assert.Equal(
        "0: [1] set throttle = notch 1\n1: [1] wait until cab fuel gauge low (0..0.2) at most 20 s else 3\n2: [1] done\n3: [1] stop: it stays",
        Cards.Ops("Turn the throttle to notch 1 until the cab fuel gauge shows low, at most 20 s. If not, stop: it stays."));

    [Theory]
    [InlineData("Do card \"Close off a compartment\" with aft.")]
    [InlineData("Do card \"Close off a compartment\" with C = aft.")]
    public void Compile_DoCardWithItsOnlyLetter_NeedsNoName(string step) => Assert.StartsWith("0: [1] do card Close off a compartment (C = aft)", Cards.Ops(step));

    [Fact]
    public void Compile_TheOtherOfTwo_IsOne() => Assert.StartsWith(
        "0: [1] read aft sight glass, right",
        Cards.OpsOf(Cards.Head + "Let C be the compartment, one of forward, aft.\n1. Read the sight glass, right of the other compartment as P1.", "forward"));

    /// <summary>Forms that the air system's cards will need: each is printed as it is written, and read again.</summary>
    [Theory]
    [InlineData("Hold the throttle at notch 8 for 10 s.")]
    [InlineData("Hold the throttle at notch 8 until the cab fuel gauge shows low, at most 20 s. If not, stop.")]
    [InlineData("Turn the throttle to notch 8 until the cab fuel gauge shows low, at most 20 s. If not, stop.")]
    [InlineData("Walk from the fuel panel to tank aft on the right side.")]
    [InlineData("Look for fuel at the foot of the aft compartment at the fuel panel on the right side. If not, go to the end.")]
    [InlineData("Push the emergency fuel cut-off on the right side once.")]
    [InlineData("Do card \"Close off a compartment\" with C = aft.")]
    [InlineData("Do card \"Close off a compartment\" with aft.")]
    [InlineData("Turn the fuel pump switch off.")]
    [InlineData("Ask the engineer to turn the throttle to idle. Wait for the answer, at most 5 min. If not, stop: not idle.")]
    [InlineData("For each car from the first to the last:\n   - Wait 5 s.\n   - Wait 6 s.")]
    public void Format_Form_PrintsItAsItWasWritten(string step)
    {
        string text = Cards.WithHead(step).ReplaceLineEndings("\n") + "\n";
        Assert.Equal(text, Sightglass.Cards.Format.CardFormat.Format(Cards.Read(text).Card!));
    }

    [Fact]
    public void Compile_HeadWithNumbersThatAreRead_NamesThem()
    {
        const string Text = "Card: Test\nFor: mechanical\nMust never: P2 is less than 5 %; the engine starves.\nDone when: P1 − P2 is at most 5 % and P2 is known. Stays so for 1 min.\n\n1. Read the cab fuel gauge as P1.\n2. Read the cab fuel gauge as P2.\n";
        string listing = Cards.Listing(Text);
        Assert.Contains("must never P2 is less than 5 %; engine starves", listing, StringComparison.Ordinal);
        Assert.Contains("done when ((P1 − P2) <= 0.05 and (P2) known) for 60 s", listing, StringComparison.Ordinal);
        Assert.Equal(Text, Sightglass.Cards.Format.CardFormat.Format(Cards.Clean(Text)));
    }

    [Fact]
    public void Read_HeadWithANumberNobodyReads_PointsAtIt()
    {
        Basics.Diagnostics.Diagnostic found = Assert.Single(Cards.Read("Card: Test\nFor: mechanical\nDone when: P1 − P3 is at most 5 %.\n\n1. Read the cab fuel gauge as P1.\n").Found);
        Assert.Equal(("C028", 3, 12, "did you mean `P1`?"), (found.Code, found.Span.Line, found.Span.Column, found.Fix));
    }

    [Fact]
    public void Language_EveryOperationOfTheTable_HasAPatternThatPrints()
    {
        foreach (SentenceForm form in EnglishForms.Language.Forms)
        {
            Assert.NotEmpty(form.Pattern.Readable());
            Assert.Equal(form.Pattern.SlotNames.Length, form.Pattern.SlotNames.Distinct().Count());
        }
    }
}
