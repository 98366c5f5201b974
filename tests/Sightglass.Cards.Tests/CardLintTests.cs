using Sightglass.Basics.Diagnostics;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards.Tests;

/// <summary>Each rule with a sentence that breaks it and one that keeps it. Sources: docs/cards.md, 'What lint checks'.</summary>
public sealed class CardLintTests
{
    private const string Panel = "1. Go to the fuel panel on the right side.\n";
    private const string Cab = "1. Go to the cab.\n";
    private const string Caution = "Caution: Fuel on ballast is slippery. You can fall. Step on ties.\n";

    public static TheoryData<string, string, string> Rules { get; } = new()
    {
        // 1 ASD-STE100 5.2; HSG48
        { "L001", Panel + "2. Open the aft supply valve and close the aft return valve.", Panel + "2. Open the aft supply valve.\n3. Close the aft return valve." },
        // 2 STE 5.3
        { "L002", Panel + "2. The aft supply valve to open.", Panel + "2. Open the aft supply valve." },
        // 3 STE 5.4
        { "L003", Panel + "2. Close the aft supply valve if fuel is smelled.", Panel + "2. If fuel is smelled, close the aft supply valve." },
        { "L003", Panel + "2. If fuel is smelled close the aft supply valve.", Panel + "2. If fuel is smelled, close the aft supply valve." },
        // 4 HSG48
        { "L004", Panel + "2. Open all except the aft supply valve.", Panel + "2. Open the forward supply valve." },
        { "L004", Panel + "2. Check that the aft supply valve is not closed. If not, stop.", Panel + "2. Check that the aft supply valve is open. If not, stop." },
        // 5 writers' guides, from memory
        { "L005", Panel + "2. You should open the aft supply valve.", Panel + "2. Open the aft supply valve." },
        { "L005", Panel + "2. The aft supply valve is opened.", Panel + "2. Open the aft supply valve." },
        // 6 STE 5.1, 6.3, 2.1
        {
            "L006",
            Panel + "2. Check that the sight glass of the forward compartment on the right side shows room and the sight glass of the centre compartment on the right side shows room. If not, stop.",
            Panel + "2. Check that the forward sight glass shows room and the centre sight glass shows room. If not, stop."
        },
        {
            "L006",
            Panel + "2. Tell the engineer: fuel glass valve pressure gauge.",
            Panel + "2. Tell the engineer: the fuel pressure gauge is behind glass."
        },
        // 7 human-factors guides to procedure writing
        { "L007", Panel + "2. Open the aft supply valve.\n" + Caution, Panel + Caution + "2. Open the aft supply valve." },
        { "L007", Panel + "2. In any order:\n" + Caution + "   - Open the aft supply valve.", Panel + Caution + "2. In any order:\n   - Open the aft supply valve." },
        // 8 STE 5.5; OASIS DITA hazard statement
        {
            "L008",
            Panel + "Caution: Fuel on ballast is slippery. You can fall. Close the aft supply valve.\n2. Wait 5 s.",
            Panel + Caution + "2. Close the aft supply valve."
        },
        // 9 DITA 1.3; ANSI Z535 from memory
        { "L009", Panel + "Caution: Fuel is on the ground. Keep flames away.\n2. Wait 5 s.", Panel + Caution + "2. Wait 5 s." },
        { "L009", Panel + "Caution: Fuel on ballast is slippery. You can fall.\n2. Wait 5 s.", Panel + Caution + "2. Wait 5 s." },
        { "L009", Panel + "Caution: Step on ties. Do not fall.\n2. Wait 5 s.", Panel + Caution + "2. Wait 5 s." },
        // 10 HSG48
        { "L010", Panel + "2. Open the aft supply valve slowly.", Panel + "2. Open the aft supply valve." },
        { "L010", Panel + "2. Wait until the aft sight glass shows 4 cm, at most 5 min. If not, stop.", Panel + "2. Wait until the aft sight glass shows at most 4 cm, at most 5 min. If not, stop." },
        { "L010", Panel + "2. Check that the aft sight glass shows at least 40 mm. If not, stop.", Panel + "2. Check that the aft sight glass shows at least 4 cm. If not, stop." },
        // 11 human-factors guides
        { "L011", "1. Open the aft supply valve.", Panel + "2. Open the aft supply valve." },
        { "L011", Panel + "2. Go to the cab.\n3. Go to the fuel panel on the right side.", Panel + "2. Wait 5 s.\n3. Go to the cab." },
        // 12 HSG48
        { "L012", Panel + "2. Tell somebody: fuel on the ground.", Panel + "2. Tell the engineer: fuel on the ground." },
        // 13 human-factors guides
        { "L013", Panel + "2. Open the aft supply valve.", Panel + "2. Open the aft supply valve.\n3. Check that the aft supply valve is open. If not, stop." },
        // 14 human-factors guides
        {
            "L014",
            Panel + "2. Wait 5 s.\n3. Repeat step 2 until fuel is smelled, at most 3 times. If not, stop.",
            Panel + "2. Wait 5 s.\n3. Repeat step 2 until fuel is smelled, at most 3 times, every 2 min. If not, stop."
        },
        { "L014", Panel + "2. Wait 5 s.\n3. If fuel is smelled, go to step 2.", Panel + "2. If fuel is smelled, go to step 3.\n3. Wait 5 s." },
        { "L014", Panel + "2. Repeat this again.", Panel + "2. Wait 5 s." },
        // 15 US DOE-STD-1029
        { "L015", Panel + "2. Wait until fuel is smelled, at most 5 min.", Panel + "2. Wait until fuel is smelled, at most 5 min. If not, stop." },
        { "L015", Panel + "2. For each compartment:\n   - Wait until fuel is smelled, at most 5 min.", Panel + "2. For each compartment:\n   - Wait until fuel is smelled, at most 5 min. If not, stop." },
        {
            "L015",
            Panel + "2. Wait until fuel is smelled, at most 45 min. If not, stop.",
            Panel + "2. Tell the engineer: 45 minutes begin.\n3. Wait until fuel is smelled, at most 45 min. If not, stop."
        },
        // 16 DOE-STD-1029
        {
            "L016",
            Panel + "2. Open the forward or the aft supply valve.",
            Panel + "2. Do one of:\n   - If fuel is smelled, open the forward supply valve.\n   - Open the aft supply valve."
        },
        { "L016", Panel + "2. Do one of: If fuel is smelled, stop. Wait 5 s.", Panel + "2. Do one of:\n   - If fuel is smelled, stop.\n   - Wait 5 s." },
        // 17 STE 1.11
        { "L017", Panel + "2. Open the supply valve, aft.", Panel + "2. Open the aft supply valve." },
        // 18 human-factors guides
        { "L018", Panel + "2. Open the drains in no particular order.", Panel + "2. In any order:\n   - Open the aft drain cock.\n   - Open the centre drain cock." },
        // 19 own
        { "L019", Panel + "2. Go to step 7.", Panel + "2. Go to the end." },
        { "L019", Panel + "2. Go to the end.\n3. Wait 5 s.", Panel + "2. Wait 5 s.\n3. Go to the end." },
        { "L019", Panel + "2. Wait 5 s.\n3. Go to step 2.", Panel + "2. Wait 5 s.\n3. Stop." },
        // 20 DESIGN, third idea
        { "L020", Cab + "2. Read the panel fuel gauge as P1.", Panel + "2. Read the panel fuel gauge as P1." },
        { "L020", Cab + "2. Wait until the aft sight glass shows low, at most 5 min. If not, stop.", Panel + "2. Wait until the aft sight glass shows low, at most 5 min. If not, stop." },
        { "L020", Cab + "2. Check that no fuel is smelled. If not, stop.", Panel + "2. Check that no fuel is smelled. If not, stop." },
        { "L020", Cab + "2. Look for fuel at the foot of the aft compartment at the fuel panel on the right side. If not, stop.", Panel + "2. Look for fuel at the foot of the aft compartment at the fuel panel on the right side. If not, stop." },
        { "L020", Cab + "2. Open the aft supply valve.", Panel + "2. Open the aft supply valve." },
        { "L020", Panel + "2. If fuel is smelled, go to step 4.\n3. Go to the cab.\n4. Check that no fuel is smelled. If not, stop.", Panel + "2. If fuel is smelled, go to step 4.\n3. Wait 5 s.\n4. Check that no fuel is smelled. If not, stop." },
        // Authority: DESIGN, third idea
        { "C060", Cab + "2. Turn the head-end power switch to off.", Cab + "2. Engineer: Turn the head-end power switch to off." },
        { "C060", "1. Ask the conductor to turn the head-end power switch off. Wait for the answer, at most 1 min. If not, stop.", "1. Ask the engineer to turn the head-end power switch off. Wait for the answer, at most 1 min. If not, stop." },
        {
            "C061",
            Cab + "2. Start the engine.",
            Cab + "2. Ask the engineer for permission to operate the engine. Wait for the answer, at most 1 min. If not, stop.\n3. Start the engine."
        },
        { "C062", Cab + "2. Turn the head-end power switch to off.", Cab + "2. Tell the conductor: dark for a minute.\n3. Turn the head-end power switch to off." },
        { "C063", "1. Conductor: Wait 5 s.", "1. Mechanical: Wait 5 s." },
        { "C064", "1. Go to tank aft on the right side.", Asks + "2. Go to tank aft on the right side.\n3. Go to the cab.\n4. Give back protection." },
        { "C064", Cab + "2. Turn the head-end power switch to off.", Panel + "2. Chock the front wheel.\n3. Go to the cab.\n4. Turn the head-end power switch to off." },
        { "C065", Asks + "2. Go to tank aft on the right side.", Asks + "2. Go to tank aft on the right side.\n3. Go to the cab.\n4. Give back protection." },
        // whoever was asked waits for it; what is set by hand stays where it is seen, and somebody is told
        {
            "C075",
            Asks + "2. Go to tank aft on the right side.\n3. Check that no fuel is smelled. If not, stop: fuel is smelled.\n4. Go to the cab.\n5. Give back protection.",
            Asks + "2. Go to tank aft on the right side.\n3. Check that no fuel is smelled. If not, go to step 7.\n4. Go to the cab.\n5. Give back protection.\n6. Go to the end.\n7. Go to the cab.\n8. Give back protection.\n9. Stop: fuel is smelled."
        },
        {
            "C075",
            Panel + "2. Chock the front wheel.\n3. Check that no fuel is smelled. If not, stop: fuel is smelled.\n4. Remove the chock from the front wheel.",
            Panel + "2. Chock the front wheel.\n3. Check that no fuel is smelled. If not, stop: fuel is smelled, the machine stays chocked.\n4. Remove the chock from the front wheel."
        },
        {
            "C075",
            Asks + "2. Wait until fuel is smelled, at most 5 min. If not, stop, and tell the engineer: nothing is smelled.\n3. Give back protection.",
            Asks + "2. Wait until fuel is smelled, at most 5 min. If not, stop, and tell the engineer: nothing is smelled, stay for going between.\n3. Give back protection."
        },
    };

    /// <summary>A stop without the answer holds nothing, nor does one after it was given back or removed, nor on a way that never asked.</summary>
    [Theory]
    [InlineData(Asks)]
    [InlineData(Asks + "2. Give back protection.\n3. Check that no fuel is smelled. If not, stop: fuel is smelled.")]
    [InlineData(Panel + "2. If fuel is smelled, go to step 5.\n3. Chock the front wheel.\n4. Remove the chock from the front wheel.\n5. Check that no fuel is smelled. If not, stop: fuel is smelled.")]
    public void Check_StopThatHoldsNothing_IsNotReported(string card) => Assert.DoesNotContain("C075", Codes(card));

    private const string Asks = "1. Ask the engineer for protection for going between. Wait for the answer, at most 1 min. If not, stop.\n";

    [Theory]
    [MemberData(nameof(Rules))]
    public void Check_BadAndGoodSentence_OnlyTheBadOneIsReported(string code, string bad, string good)
    {
        Assert.Contains(code, Codes(bad));
        Assert.DoesNotContain(code, Codes(good));
    }

    [Theory]
    [InlineData("L007")]
    [InlineData("L008")]
    [InlineData("L017")]
    [InlineData("L019")]
    [InlineData("L020")]
    public void Check_RuleMarkedE_IsAnError(string code)
    {
        string bad = Rules.First(r => r.Data.Item1 == code).Data.Item2;
        Assert.All(Found(bad).Where(d => d.Code == code), d => Assert.Equal(Severity.Error, d.Severity));
    }

    [Fact]
    public void Check_EveryRule_HasABadAndAGoodSentence() =>
        Assert.Equal(Enumerable.Range(1, 20).Select(n => $"L{n:000}"), Rules.Select(r => r.Data.Item1).Where(c => c[0] == 'L').Distinct().Order(StringComparer.Ordinal));

    [Fact]
    public void Check_EveryWarning_IsNoError()
    {
        string[] errors = ["L007", "L008", "L017", "L019", "L020"];
        Assert.All(
            Rules.SelectMany(r => Found(r.Data.Item2)).Where(d => d.Code[0] == 'L' && !errors.Contains(d.Code)),
            d => Assert.Equal(Severity.Warning, d.Severity));
    }

    [Fact]
    public void Check_PlaceJoinedFromTwoWays_ReportsTheOneThatCannotSee()
    {
        Diagnostic found = Assert.Single(Found(Panel + "2. If fuel is smelled, go to step 4.\n3. Go to the cab.\n4. Check that no fuel is smelled. If not, stop."), d => d.Code == "L020");
        Assert.Contains("from `cab`", found.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_MayNotOperate_SaysWhomToAsk()
    {
        Diagnostic found = Assert.Single(Found(Cab + "2. Turn the head-end power switch to off."), d => d.Code == "C060");
        Assert.StartsWith("ask somebody who may: `Ask the engineer to turn the head-end power switch to off. Wait for the answer,", found.Fix, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_BackAndForth_TellsTheMetres()
    {
        Diagnostic found = Assert.Single(Found(Panel + "2. Go to the fuel panel on the left side.\n3. Go to the fuel panel on the right side."), d => d.Code == "L011");
        Assert.Contains("at least 10 m", found.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_LeakCard_FindsOnlyWhatIsKnown() => Assert.Equal(["L013", "L015"], Found(Cards.Leak, withHead: false).Select(d => d.Code).Distinct().Order(StringComparer.Ordinal));

    private static IEnumerable<string> Codes(string steps) => Found(steps).Select(d => d.Code);

    private static DiagnosticList Found(string steps, bool withHead = true)
    {
        (Card? card, DiagnosticList found) = Cards.Read(withHead ? Cards.Head + steps : steps);
        CardLint.Check(card!, TestBook.Book, found);
        return found;
    }
}
