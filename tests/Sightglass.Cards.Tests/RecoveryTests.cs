using Sightglass.Basics.Diagnostics;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards.Tests;

/// <summary>All errors of a card at once, each where it stands, and the rest of the card read.</summary>
public sealed class RecoveryTests
{
    [Fact]
    public void Read_ManyErrors_ReportsEachAtItsPlace()
    {
        const string text = """
            Card: Wrong in many ways
            For: mechanicle; told: mechanical desk
            Done wen: the engine runs.

            1. Opne the aft supply valve.
            2. Open the aft suply valve.
            3. Turn the throttle to notch 9.
            4. Wait 5 parsecs.
            5. Check that the cab fuel gauge shows room. If not, stop.
            6. Check that the aft supply valve is open.
            7. Go to the fuel panel.
            some words
            8. Wait until the engine runs, at most 5 min. If not, go to step 20.
            """;
        string[] found = [.. Cards.Read(text).Found.Select(d => $"{d.Span.Line}:{d.Span.Column} {d.Code} {d.Fix}")];
        string[] expected =
        [
            "2:6 C022 did you mean `mechanical`?",
            "3:1 C003 did you mean `Done when`?",
            "5:4 C004 did you mean `Open`?",
            "6:9 C020 did you mean `aft supply valve`?",
            "7:25 C026 its positions are idle, notch 1, notch 8",

            "9:40 C027 its words are low",
            "10:4 C040 add `If not, go to step N.` or `If not, stop.`",
            "11:10 C030 name one of them",
            "12:1 C003 number a step (`1. …`), or indent a line that goes on the line above",
            "13:15 C037 say what an indication shows or what is seen, heard or smelled",
            "13:66 L019 ",
        ];
        Assert.Equal(expected, found.Where(f => !f.Contains("Q0", StringComparison.Ordinal)));
        Assert.Contains(found, f => f.StartsWith("8:", StringComparison.Ordinal) && f.Contains(" Q0", StringComparison.Ordinal));
    }

    [Fact]
    public void Read_LineThatFails_DoesNotStopTheRest()
    {
        (Card? card, _) = Cards.Read(Cards.WithHead("Opne it.", "Open the aft supply valve."));
        Assert.Equal(2, card!.Steps.Count());
        Assert.True(card.HasErrors);
        Assert.Throws<ArgumentException>(() => CardCompiler.Compile(card, TestBook.Book));
    }

    [Theory]
    [InlineData("")]
    [InlineData("\n\n  \n")]
    [InlineData("no card at all")]
    public void Read_NoCard_IsNullWithAReason(string text)
    {
        (Card? card, DiagnosticList found) = Cards.Read(text);
        Assert.Null(card);
        Assert.Equal("C001", Assert.Single(found).Code);
    }

    [Fact]
    public void Read_EnormousText_IsRefusedAtOnce() => Assert.Equal(["C002"], Cards.Codes(new string('x', CardReader.MostCharacters + 1)));

    [Fact]
    public void Read_EnormousLine_IsOneError()
    {
        string line = "Open " + string.Join(' ', Enumerable.Repeat("the valve to the valve, and", 200));
        Assert.Contains("C002", Cards.Codes(Cards.WithHead(line)));
    }

    [Theory]
    [InlineData("1. Wait 1 s.\n1. Wait 2 s.", "C007")]
    [InlineData("1. Wait 1 s.\n3. Wait 2 s.", "C008")]
    [InlineData("1. Wait 1 s.\n   - Wait 2 s.", "C009")]
    [InlineData("1. In any order:", "C010")]
    [InlineData("1. If not, go to step 1.", "C011")]
    [InlineData("", "C012")]
    [InlineData("1. Go to the moon.", "C021")]
    [InlineData("1. Tell the king: hello.", "C022")]
    [InlineData("1. Check that P9 is at most 5 %. If not, stop.", "C028")]
    [InlineData("1. Check that P9 is known. If not, stop.", "C028")]
    [InlineData("Must never: P9 is at most 5 %.\n1. Wait 1 s.", "C028")]
    [InlineData("Must never: P1 is at most 5 psi.\n1. Read the cab fuel gauge as P1.", "C035")]
    [InlineData("Use when: P1 is at most 5 %.\n1. Read the cab fuel gauge as P1.", "C028")]
    [InlineData("1. Look for smoke.", "C023")]
    [InlineData("Must never: the moon rises.\n1. Wait 1 s.", "C024")]
    [InlineData("1. Give back protection for flying.", "C025")]
    [InlineData("1. Tell the engineer: {P9}.", "C028")]
    [InlineData("1. Read the cab fuel gauge as P1.\n2. Read the fuel pressure gauge as P1.", "C029")]
    [InlineData("Let A be the compartment, one of forward, aft.\n1. Wait 1 s.", "C029")]
    [InlineData("Let C be the compartment, one of forward, aft.\n1. Read the sight glass of each other compartment as P1.\n2. Wait until the sight glass of each compartment shows low, at most 5 s.", "")]
    [InlineData("Let C be the compartment, one of forward, centre, aft.\n1. Read the sight glass of each other compartment as P1.", "C031")]
    [InlineData("1. Open the aft compartment.", "C033")]
    [InlineData("1. Read the throttle as P1.", "C034")]
    [InlineData("1. Check that the cab fuel gauge shows at least 5 psi. If not, stop.", "C035")]
    [InlineData("1. Check that the cab fuel gauge shows at least 120 %. If not, stop.", "C036")]
    [InlineData("Must never: fuel is smelled.\n1. Wait 1 s.", "C038")]
    [InlineData("1. Wait until the cab fuel gauge shows low.", "C041")]
    [InlineData("1. Ask the engineer for protection. If not, stop.", "C041")]
    [InlineData("1. Check that fuel is smelled and the cab fuel gauge shows low or the aft supply valve is open. If not, stop.", "C042")]
    [InlineData("1. Wait 1 s.\n2. Wait 1 s.\n3. Repeat steps 1 to 1 until fuel is smelled, at most 3 times.", "C043")]
    [InlineData("1. Wait 0 s.", "C044")]
    [InlineData("1. Tell the engineer: {what.", "C045")]
    [InlineData("Let C be the compartment, one of forward, aft.\n1. Tell the engineer: C leaks.", "C046")]
    [InlineData("1. Read the cab fuel gauge as P1.\n2. Check that P1 + × 3 is at most 5 %. If not, stop.", "C047")]
    [InlineData("1. When fuel is smelled, close the aft supply valve.", "C048")]
    [InlineData("1. Give back protection.", "C049")]
    [InlineData("1. Do card \"Another\" with C = aft.", "C051")]
    [InlineData("1. Open the supply valve, aft.", "L017")]
    [InlineData("1. Go to step 9.", "L019")]
    [InlineData("For: mechanical\n1. Wait 1 s.", "C005")]
    public void Read_Fault_HasItsCode(string lines, string code)
    {
        string[] codes = Cards.Codes(Cards.Head + lines);
        Assert.Equal(code.Length == 0 ? ["C031"] : [code], codes.Distinct());
    }

    [Fact]
    public void Read_HeadWithoutDoneWhen_SaysSo() => Assert.Equal(["C006", "C006"], Cards.Codes("Card: X\n1. Wait 1 s."));

    [Theory]
    [InlineData("Open the aft supply valve and close the aft return valve.")]
    [InlineData("Open the aft supply valve, then close the aft return valve.")]
    [InlineData("Open the aft supply valve; close the aft return valve.")]
    [InlineData("Open the aft supply valve and then close the aft return valve.")]
    [InlineData("Open the aft supply valve. Close the aft return valve.")]
    public void Read_TwoActionsHungTogether_AreBothRead(string step) => Assert.Equal(
        "0: [1] set aft supply valve = open\n1: [1] set aft return valve = closed\n2: [1] done", Cards.Ops(step));

    [Theory]
    [InlineData("Close the aft supply valve if fuel is smelled.")]
    [InlineData("If fuel is smelled close the aft supply valve.")]
    public void Read_ConditionLateOrWithoutComma_IsStillAnIf(string step) => Assert.Equal(
        "0: [1] if sign 'fuel is smelled' else 2\n1: [1] set aft supply valve = closed\n2: [1] done", Cards.Ops(step));

    [Fact]
    public void Read_WrappedLines_AreOne() => Assert.Equal(
        Cards.Ops("Wait until the cab fuel gauge shows low, at most 5 min. If not, stop."),
        Cards.OpsOf(Cards.Head + "1. Wait until the cab fuel gauge\n   shows low, at most\n\t5 min. If not,\n   stop."));

    [Fact]
    public void Read_WindowsLineEnds_ChangeNothing() => Assert.Equal(
        Cards.Listing(Cards.Leak, "aft"), Cards.Listing(Cards.Leak.ReplaceLineEndings("\r\n"), "aft"));
}
