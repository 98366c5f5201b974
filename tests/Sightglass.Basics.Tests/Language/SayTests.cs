using System.Text.RegularExpressions;
using Sightglass.Basics.Language;

namespace Sightglass.Basics.Tests.Language;

/// <summary>What is said in another language, and that English is said as it is written.</summary>
public sealed partial class SayTests
{
    private static readonly Tongue s_spanish = Tongue.Spanish.With(text => text switch
    {
        "forward compartment" => "compartimento delantero",
        "room" => "espacio",
        "notch 1" => "punto 1",
        _ => null,
    });

    [Fact]
    public void With_English_IsTheTextWithItsGapsFilled()
    {
        string place = "cab";
        Assert.Equal("Go to cab, 1.5 m.", Say.With($"Go to {place}, {1.5:0.0} m."));
    }

    [Fact]
    public void With_NameInAGap_IsSaidInTheLanguage()
    {
        using (s_spanish.Speak())
        {
            string item = "forward compartment";
            Assert.Equal("compartimento delantero: 12.5", Say.With($"{item}: {12.5:0.0}"));
            Assert.Equal("compartimento delantero", Say.Book(item));
            Assert.Null(Say.Book(null));
        }
    }

    /// <summary>What is kept unsaid, a line of a journal, is read in one language and then in another.</summary>
    [Fact]
    public void With_SaidInOneLanguage_IsSaidInAnotherAfterwards()
    {
        string item = "forward compartment";
        FormattableString kept = $"{item}: {12.5:0.0}";
        using (s_spanish.Speak())
        {
            Assert.Equal("compartimento delantero: 12.5", Say.With(kept));
        }

        Assert.Equal("forward compartment: 12.5", Say.With(kept));
        Assert.Equal("forward compartment", kept.GetArgument(0));
    }

    [Theory]
    [InlineData(0, "0 stops")]
    [InlineData(1, "1 stop")]
    [InlineData(2, "2 stops")]
    public void Of_Count_TakesItsText(int count, string expected) => Assert.Equal(expected, Say.Of(count, $"{count} stop", $"{count} stops"));

    [Fact]
    public void Speak_Disposed_SpeaksAsBefore()
    {
        using (Tongue.Marked.Speak())
        {
            Assert.Equal("⟦Open⟧", Say.It("Open"));
            using (Tongue.English.Speak())
            {
                Assert.Equal("Open", Say.It("Open"));
            }

            Assert.Equal("⟦Open⟧", Say.It("Open"));
        }

        Assert.Equal("Open", Say.It("Open"));
    }

    [Fact]
    public async Task Speak_InAnotherTask_IsHeardThereAlone()
    {
        string[] heard = await Task.WhenAll(Tongue.All.Append(Tongue.Marked).Select(t => Task.Run(() =>
        {
            using IDisposable spoken = t.Speak();
            Thread.Sleep(1);
            return Tongue.Spoken.Code;
        })));
        Assert.Equal(["en", "es", "qps"], heard);
        Assert.Same(Tongue.Usual, Tongue.Spoken);
    }

    [Fact]
    public void WaysOf_Word_AreThoseOfTheProgramOrTheBook()
    {
        Assert.Contains("abierta", s_spanish.WaysOf("open"));
        Assert.Equal(["espacio"], s_spanish.WaysOf("room"));
        Assert.Equal(["never heard"], s_spanish.WaysOf("never heard"));
        Assert.Equal(["open"], Tongue.English.WaysOf("open"));
    }

    [Fact]
    public void As_WordThatHasNoPlace_IsTheWordAlone()
    {
        using (Tongue.Spanish.Speak())
        {
            Assert.Equal("nowhere near", Say.As("button", "nowhere near"));
        }
    }

    /// <summary>A gap that one side lacks would be a hole in a sentence, or a crash.</summary>
    [Fact]
    public void Words_OfEveryLanguage_HaveTheGapsOfTheEnglish() => Assert.All(
        Tongue.All.SelectMany(t => t.Words),
        w => Assert.Equal(Gaps(w.Key), Gaps(w.Value)));

    private static SortedSet<string> Gaps(string text) => [.. Gap().Matches(text).Select(m => m.Value)];

    [GeneratedRegex(@"\{\d+")]
    private static partial Regex Gap();
}
