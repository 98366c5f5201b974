using CsCheck;
using Sightglass.Basics.Diagnostics;
using Sightglass.Cards.Format;
using Sightglass.Cards.Programs;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards.Tests;

/// <summary>What must hold for any text: nothing throws, printing is stable and keeps the meaning, spans lie in the text.</summary>
public sealed class CardProperties
{
    private static readonly string[] s_lines =
    [
        "Card: Title", "For: mechanical, conductor; told: nobody", "Needs: radio", "# comment", "", "  ", "Must never: the engine starves; a compartment overflows",
        "Let C be the compartment where fuel is seen at its foot, out of forward, centre, aft.", "Let C be the compartment whose sight glass shows low, out of aft, centre",
        "Use when: fuel is smelled or fuel is seen at the foot of any compartment", "Done when: compartment C is empty and the engine runs. Stays so for 10 min.",
        "Caution: Fuel burns. Keep away.", "1. Go to the fuel panel on the right side", "2. Open the supply valve of C. Close the return valve of each other compartment",
        "3. Check that C's sight glass shows at least 5 cm and the aft supply valve is not open. If not, stop, and tell the engineer: {C} is dry. Help.",
        "5. Wait until no fuel is smelled, at most 5min", "4. Read the cab fuel gauge as P1", "6. If P1 - P1 is less than 3 %, go to step 2", "7. In any order:", "   - Wait 5 s",
        "   - Conductor: Wait 6 s.", "8. Repeat steps 1 to 7 until fuel is smelled, at most 3 times, every 2 min. If not, go to the end", "9. For each car from the last to the first:", "   - Go to the A truck, right of the car. If not, go on with the next car.", "9. For each compartment of the train: Open the compartment supply valve. For each truck: Wait 5 s.",
        "9. Do one of: If fuel is smelled, stop. Wait 5 s.",
        "  and wait", "10. Engineer: Turn the throttle to idle if fuel is smelled", "11. Hold the throttle at notch 8 for 1 1/4 min", "12. Close the aft supply valve, then open it",
        "rubbish", "3. Opne it. If not, close the door; then run", "1. Tell the engineer: {", "13. Do card \"Parking brake stuck\" with C = aft", "14. Stop: now. Or later?", "15. Wait 5 s . . Then go",
        "16. Ask the engineer for protection. Wait for the answer, at most 5 min. If not, stop.", "17. If fuel is smelled, if fuel is smelled, close the aft supply valve",
    ];

    private static readonly string[] s_bits = ["", " ", "\n", ".", ",", ":", ";", "\"", "{", "}", "'s", "C", " and ", " of ", "5", "\t", "-", "é", "\0", "“"];

    private static readonly Gen<string> s_card = Gen.Select(Gen.Int[0, s_lines.Length - 1].Select(i => s_lines[i]).Array[1, 25], Gen.Bool).Select((lines, windows) => string.Join(windows ? "\r\n" : "\n", lines));

    private static readonly Gen<string> s_mutated = Gen.Select(s_card, Gen.Int[0, 5000], Gen.Int[0, 40], Gen.Int[0, s_bits.Length - 1].Select(i => s_bits[i]))
        .Select((text, at, length, insert) =>
        {
            int start = text.Length == 0 ? 0 : at % text.Length;
            return text[..start] + insert + text[Math.Min(text.Length, start + (length % 7))..];
        });

    [Fact]
    public void Read_AnyText_ThrowsNothing() => Gen.OneOf(s_mutated, Gen.String).Holds(
        text =>
        {
            (Card? card, DiagnosticList found) = Cards.Read(text);
            DiagnosticList lint = [];
            if (card is not null)
            {
                CardLint.Check(card, TestBook.Book, lint);
                _ = CardFormat.Format(card);
            }

            Assert.All(found.Concat(lint), d => Assert.InRange(d.Span.End, 0, text.Length));
        },
        iter: 400);

    [Fact]
    public void Format_ReadAgain_PrintsTheSame() => s_mutated.Holds(
        text =>
        {
            if (Cards.Read(text).Card is { } card)
            {
                string once = CardFormat.Format(card);
                Card? again = Cards.Read(once).Card;
                Assert.NotNull(again);
                Assert.Equal(once, CardFormat.Format(again));
            }
        },
        iter: 400);

    [Fact]
    public void Format_ReadAgain_MeansTheSame() => s_card.Holds(
        text =>
        {
            (Card? card, DiagnosticList found) = Cards.Read(text);
            if (card is null)
            {
                return;
            }

            (Card? again, DiagnosticList foundAgain) = Cards.Read(CardFormat.Format(card));
            Assert.Equal(Codes(found), Codes(foundAgain));
            if (CardCompiler.TryCompile(card, TestBook.Book, "centre", []) is { } program)
            {
                CardProgram second = CardCompiler.Compile(again!, TestBook.Book, "centre");
                Assert.Equal(WithoutSteps(ProgramListing.Of(program)), WithoutSteps(ProgramListing.Of(second)));
            }
        },
        iter: 400);

    private static string[] Codes(DiagnosticList found) => [.. found.Select(d => d.Code).Where(c => c != "C008").Order(StringComparer.Ordinal)];

    /// <summary>Printing numbers the steps anew.</summary>
    private static string WithoutSteps(string listing) => System.Text.RegularExpressions.Regex.Replace(listing, @"\[\d+\]|step \d+", "");
}
