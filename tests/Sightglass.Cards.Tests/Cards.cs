using Sightglass.Basics.Diagnostics;
using Sightglass.Cards.Programs;
using Sightglass.Cards.Sentences;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards.Tests;

/// <summary>Reads and compiles texts against the test book.</summary>
internal static class Cards
{
    public const string Head = """
        Card: Test
        For: mechanical; told: mechanical desk
        Done when: the engine runs.

        """;

    public const string Leak = """
        Card: Empty a leaking compartment
        For: mechanical; told: the mechanical desk
        Needs: radio, lamp
        Let C be the compartment where fuel is seen at its foot, out of forward, centre, aft.

        # What the person sees, and what must be so in the end.
        Use when: fuel is seen at the foot of any compartment.
        Must never: the engine starves; a compartment overflows.
        Done when: compartment C is empty and the engine runs. Stays so for 10 min.

        1. Tell the mechanical desk: fuel leak at the {C} compartment.
        Caution: Fuel on ballast is slippery and burns. You can fall. Keep flames away.
        2. Go to the fuel panel on the right side.
        3. Check that the sight glass of each other compartment shows room. If not, go to step 8.
        4. Close the return valve of C.
        5. Close the supply valve of each other compartment.
        6. Wait until the sight glass of C shows low, at most 45 min. If not, go to step 8.
        7. Open the supply valve of each other compartment.
        8. Close the supply valve of C.
        """;

    public static (Card? Card, DiagnosticList Found) Read(string text, CardLanguage? language = null)
    {
        DiagnosticList found = [];
        return (CardReader.Read(new SourceText("test.card", text), TestBook.Book, found, language), found);
    }

    public static Card Clean(string text, CardLanguage? language = null)
    {
        (Card? card, DiagnosticList found) = Read(text, language);
        Assert.Empty(found.Where(d => d.Severity == Severity.Error));
        return card!;
    }

    /// <summary>A card with the ordinary head and these steps.</summary>
    public static Card Steps(params string[] steps) => Clean(WithHead(steps));

    public static string WithHead(params string[] steps) => Head + string.Join("\n", steps.Select((s, i) => s[0] == '!' ? s[1..] : $"{i + 1}. {s}"));

    public static string Listing(string text, string? binding = null, CardLanguage? language = null) =>
        ProgramListing.Of(CardCompiler.Compile(Clean(text, language), TestBook.Book, binding));

    /// <summary>The operations of steps, without the head.</summary>
    public static string Ops(params string[] steps) => OpsOf(WithHead(steps));

    public static string OpsOf(string text, string? binding = null) =>
        string.Join("\n", Listing(text, binding).ReplaceLineEndings("\n").Split('\n').Skip(5)).TrimEnd();

    public static string[] Codes(string text) => [.. Read(text).Found.Select(d => d.Code)];
}
