using Sightglass.Basics.Diagnostics;

namespace Sightglass.Basics.Tests.Diagnostics;

public sealed class SpanTests
{
    private static readonly SourceText s_a = new("a.yaml", "one two three"), s_b = new("b.yaml", "four five six");

    /// <summary>By file, then by place; what is read at a use stands where the use stands, after the use itself, and by the places within it. Source: derived.</summary>
    [Fact]
    public void Sort_OfUsesWithinUses_IsTheOrderOfTheAuthor()
    {
        Span first = new(s_a, 0, 3), second = new(s_a, 4, 3), third = new(s_b, 0, 4);
        Span within = new(s_b.SeenBy("for `x` at", second), 5, 4), earlier = new(s_b.SeenBy("for `x` at", second), 0, 4);
        Span deeper = new(s_b.SeenBy("for `y` at", within), 0, 4);
        Span[] ordered = [first, second, earlier, within, deeper, third];
        Assert.Equal(ordered, ordered.Reverse().Order());
        for (int i = 0; i < ordered.Length; i++)
        {
            for (int j = 0; j < ordered.Length; j++)
            {
                Assert.Equal(Math.Sign(i.CompareTo(j)), Math.Sign(ordered[i].CompareTo(ordered[j])));
            }
        }
    }

    [Fact]
    public void CompareTo_OfNoPlace_ComesFirst() => Assert.True(Span.None < new Span(s_a, 0, 1));
}
