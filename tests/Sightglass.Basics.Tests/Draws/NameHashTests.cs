using Sightglass.Basics.Draws;

namespace Sightglass.Basics.Tests.Draws;

public sealed class NameHashTests
{
    /// <summary>The first three: published FNV-1a test values, read as quoted in public test suites. The last: computed apart, in Python.</summary>
    [Theory]
    [InlineData("", 0xCBF29CE484222325)]
    [InlineData("a", 0xAF63DC4C8601EC8C)]
    [InlineData("foobar", 0x85944171F73967E8)]
    [InlineData("é", 0x0AC21707B7181E01)]
    public void Of_PublishedTexts_GiveThePublishedHashes(string text, ulong hash) => Assert.Equal(hash, NameHash.Of(text));
}
