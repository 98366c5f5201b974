using Sightglass.Cards.Format;
using Sightglass.Cards.Programs;
using Sightglass.Cards.Sentences;
using Sightglass.Cards.Story;

namespace Sightglass.Cards.Tests;

/// <summary>A second language is another table: the same card gives the same program.</summary>
public sealed class LanguageTests
{
    private const string English = """
        Card: Leck
        For: mechanical; told: mechanical desk
        Let C be the compartment where fuel is seen at the foot of the C compartment, out of forward, centre, aft.
        Done when: engine runs.

        Caution: Fuel is slippery. You can fall. Step on ties.
        1. Go to the fuel panel on the right side.
        2. Check that the sight glass of each other compartment shows room. If not, go to step 6.
        3. Close the return valve of C.
        4. Close the supply valve of each other compartment.
        5. Wait until the sight glass of C shows low, at most 45 min. If not, go to step 6.
        6. Tell the mechanical desk: {C}.
        7. Do card "Leer" with C = C.
        8. Chock the front wheel.
        9. Set the blue signals at the fuel panel on the right side.
        10. Connect the tail hose to the front wheel.
        11. Disconnect the tail hose.
        12. Remove the blue signals at the fuel panel on the right side.
        13. Remove the chock from the front wheel.
        14. At the same time:
           - Engineer: Go to the cab.
           - Mechanical: Go to the engine room, front.
        15. Lock and tag the fuel pump switch.
        16. Remove the lock and tag from the fuel pump switch.
        17. Ask the engineer to turn the throttle to idle. Wait for the answer, at most 2 min. If not, go to step 1.
        18. For each car from the last to the first:
           - Go to the A truck, right of car.
           - Check that the A truck window, right of car shows set. If not, go on with the next car.
           - Tell the mechanical desk: {car}.
        19. Check that the low fuel lamp is dark. If not, go to step 1.
        20. Check that the low fuel lamp is lit. If not, go to step 1.
        """;

    private const string German = """
        Karte: Leck
        Für: mechanical; Bescheid: mechanical desk
        Sei C das compartment, bei dem fuel is seen at the foot of the C compartment, von forward, centre, aft.
        Fertig, wenn: engine runs.

        Vorsicht: Kraftstoff ist rutschig. Man kann fallen. Auf den Schwellen gehen.
        1. Gehe zu fuel panel auf der Seite right.
        2. Prüfe, ob sight glass von jedem anderen compartment room zeigt. Sonst weiter bei Schritt 6.
        3. Schließe return valve von C.
        4. Schließe supply valve von jedem anderen compartment.
        5. Warte, bis sight glass von C low zeigt, höchstens 45 min. Sonst weiter bei Schritt 6.
        6. Sage mechanical desk: {C}.
        7. Mache Karte "Leer" mit C = C.
        8. Lege den Keil an front wheel.
        9. Stelle blue signals bei fuel panel auf der Seite right auf.
        10. Verbinde tail hose mit front wheel.
        11. Trenne tail hose.
        12. Nimm blue signals bei fuel panel auf der Seite right weg.
        13. Nimm den Keil von front wheel.
        14. Zur gleichen Zeit:
           - Engineer: Gehe zu cab.
           - Mechanical: Gehe zu engine room, front.
        15. Sperre fuel pump switch und hänge ein Schild an.
        16. Nimm die Sperre von fuel pump switch.
        17. Bitte engineer: stelle throttle auf idle. Warte auf die Antwort, höchstens 2 min. Sonst weiter bei Schritt 1.
        18. Vom letzten bis zum ersten, jeder car:
           - Gehe zu A truck, right of car.
           - Prüfe, ob A truck window, right of car set zeigt. Sonst weiter mit dem nächsten car.
           - Sage mechanical desk: {car}.
        19. Prüfe, ob low fuel lamp dunkel ist. Sonst weiter bei Schritt 1.
        20. Prüfe, ob low fuel lamp leuchtet. Sonst weiter bei Schritt 1.
        """;

    [Theory]
    [InlineData("forward")]
    [InlineData("aft")]
    public void Read_GermanTable_GivesTheSameProgram(string binding) => Assert.Equal(
        Cards.Listing(English, binding),
        Cards.Listing(German, binding, GermanForms.Language));

    [Fact]
    public void Format_GermanCard_StaysGerman() => Assert.Equal(German.ReplaceLineEndings("\n") + "\n", CardFormat.Format(Cards.Clean(German, GermanForms.Language)));

    [Fact]
    public void Tell_GermanCard_InGerman()
    {
        CardProgram program = CardCompiler.Compile(Cards.Clean(German, GermanForms.Language), TestBook.Book, "aft");
        CardStory story = new(program, GermanForms.Language);
        Assert.Equal("Du schlossest aft return valve.", story.Tell(2));
        int asks = program.Ops.Index().Single(o => o.Item is CardOp.Request).Index;
        Assert.Equal("Du batest engineer: stelle throttle auf idle, und die Antwort war nein: es bewegt sich nicht und ging weiter bei Schritt 1.", story.Tell(asks, held: false, reply: Reply.Stuck));
    }

    [Fact]
    public void Read_EnglishCardWithGermanTable_IsNotUnderstood() => Assert.True(Cards.Read(English, GermanForms.Language).Found.HasErrors);
}
