using Sightglass.Basics.Diagnostics;

namespace Sightglass.Cards.Tests;

public sealed class CardReaderTests
{
    [Fact]
    public void Read_LeakCard_CompilesForEachWord()
    {
        Assert.Equal("", string.Join("\n", Cards.Read(Cards.Leak).Found));
        string expected = """
            Empty a leaking compartment (C = aft)
            for mechanical; told mechanical desk
            use when (sign 'fuel is seen at the foot of the forward compartment' or sign 'fuel is seen at the foot of the centre compartment' or sign 'fuel is seen at the foot of the aft compartment')
            must never engine starves; a compartment overflows
            done when ('aft compartment is empty' and 'engine runs') for 600 s
            0: [1] tell mechanical desk: fuel leak at the aft compartment
            1: [2] go fuel panel, right
            2: [3] check (forward sight glass, right room (0.02..0.64) and centre sight glass, right room (0.02..0.64)) else 9
            3: [4] set aft return valve = closed
            4: [5] set forward supply valve = closed
            5: [5] set centre supply valve = closed
            6: [6] wait until aft sight glass, right low (0.02..0.1) at most 2700 s else 9
            7: [7] set forward supply valve = open
            8: [7] set centre supply valve = open
            9: [8] set aft supply valve = closed
            10: [8] done

            """;
        Assert.Equal(expected, Cards.Listing(Cards.Leak, "aft"));
    }
}
