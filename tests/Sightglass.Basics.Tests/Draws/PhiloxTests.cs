using Sightglass.Basics.Draws;

namespace Sightglass.Basics.Tests.Draws;

public sealed class PhiloxTests
{
    /// <summary>The published known answers of Random123 for philox4x32 with 10 rounds, read as quoted in public test suites.</summary>
    [Theory]
    [InlineData(0, 0, 0, 0xE169C58D6627E8D5, 0x9B00DBD8BC57AC4C)]
    [InlineData(ulong.MaxValue, ulong.MaxValue, ulong.MaxValue, 0x41C83B0E408F276D, 0x6D5451FDA20BC7C6)]
    [InlineData(0x85A308D3243F6A88, 0x0370734413198A2E, 0x299F31D0A4093822, 0x94FDCCEBD16CFE09, 0x24126EA15001E420)]
    public void Bits_PublishedKeys_GiveTheKnownAnswers(ulong counterLow, ulong counterHigh, ulong key, ulong low, ulong high) =>
        Assert.Equal((low, high), Philox.Bits(counterLow, counterHigh, key));
}
