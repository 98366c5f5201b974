using Sightglass.Cards.Sentences;

namespace Sightglass.Cards.Tests;

public sealed class PatternTests
{
    [Theory]
    [InlineData("Turn {item} to {position}", "Turn the handle to idle", "item=the handle position=idle")]
    [InlineData("Turn {item} to {position}", "Turn the handle to go to idle", "item=the handle position=go to idle|item=the handle to go position=idle")]
    [InlineData("Wait until {condition}[, at most {limit:time}]", "Wait until it shows, at most 5 min", "condition=it shows limit=5 min|condition=it shows, at most 5 min")]
    [InlineData("Stop[, and tell {roles}][: {text}]", "stop", "")]
    [InlineData("Stop[, and tell {roles}][: {text}]", "stop: now", "text=now")]
    [InlineData("{item} {word:scale word} zeigt", "das Glas low zeigt", "item=das word=Glas low|item=das Glas word=low")]
    [InlineData("Do card \"{title:words}\"", "Do card “A b”", "title=A b")]
    public void Match_Words_GivesEachWay(string pattern, string text, string expected)
    {
        System.Collections.Immutable.ImmutableArray<Word> words = WordList.Of(text);
        List<PatternMatch> matches = PatternMatcher.Match(Pattern.Of(pattern), words, 0, words.Length);
        Assert.Equal(
            expected,
            string.Join('|', matches.Select(m => string.Join(' ', m.Gaps.Select(g => $"{g.Slot.Name}={WordList.Join(words[g.From..g.To])}")))));
    }

    [Theory]
    [InlineData("Turn {item} to {position}", "Turn the handle")]
    [InlineData("Turn {item} to {position}", "Turns the handle to idle")]
    [InlineData("Turn {item} to {position}", "Turn to idle")]
    [InlineData("Turn {item} to {position}", "")]
    public void Match_OtherWords_GivesNothing(string pattern, string text)
    {
        System.Collections.Immutable.ImmutableArray<Word> words = WordList.Of(text);
        Assert.Empty(PatternMatcher.Match(Pattern.Of(pattern), words, 0, words.Length));
    }

    [Fact]
    public void Match_ManyWays_GivesUpInTime()
    {
        System.Collections.Immutable.ImmutableArray<Word> words = WordList.Of(string.Join(' ', Enumerable.Repeat("to", 400)));
        Assert.InRange(PatternMatcher.Match(Pattern.Of("to {item} to {position} to {place} to {sign}"), words, 0, words.Length).Count, 1, 48);
    }

    [Fact]
    public void Of_UnknownSlot_IsTheTablesFault() => Assert.Throws<FormatException>(() => Pattern.Of("Go {whither}"));

    [Theory]
    [InlineData("C’s glass, right.", "C|'s|glass|,|right|.")]
    [InlineData("at 1.5 in, 2,000 L;“x”", "at|1.5|in|,|2,000|L|;|\"|x|\"")]
    [InlineData("a,b:c;d", "a|,|b|:|c|;|d")]
    public void Of_Text_SplitsMarks(string text, string expected) => Assert.Equal(expected, string.Join('|', WordList.Of(text).Select(w => w.Text)));

    [Theory]
    [InlineData("Do card \"A b\" with C = aft, then : stop .", "Do card \"A b\" with C = aft, then: stop.")]
    [InlineData("C 's glass", "C's glass")]
    public void Join_Words_GluesMarks(string text, string expected) => Assert.Equal(expected, WordList.Join(WordList.Of(text)));
}
