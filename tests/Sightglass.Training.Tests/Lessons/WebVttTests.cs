using System.Globalization;
using System.Text.RegularExpressions;
using Sightglass.Book.Model;
using Sightglass.Training.Lessons;
using Sightglass.Training.Routes;

namespace Sightglass.Training.Tests.Lessons;

/// <summary>Source: WebVTT, W3C Candidate Recommendation, 4 April 2019: header, blocks divided by blank lines, cues with times that do not fall, no arrow and no bare &lt; or &amp; in a text.</summary>
public sealed partial class WebVttTests
{
    [Fact]
    public void Write_LessonOfTheDemo_ReadBackIsTheSameText()
    {
        LessonPlan plan = LessonPlanner.Plan(Books.Curlew.Book, new(RouteRequest.OfSystem(Books.Curlew.Book, "fuel"), 10, Depth.Repair))!;
        var spoken = Narration.Of(plan);
        List<(double From, double To, string Text)> cues = Read(WebVtt.Write(spoken));
        Assert.Equal(string.Join(' ', spoken.Select(l => string.Join(' ', l.Text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)))), string.Join(' ', cues.Select(c => c.Text.Replace('\n', ' '))));
        Assert.All(cues, c => Assert.True(c.To > c.From && c.Text.Split('\n').Length <= 2 && c.Text.Split('\n').All(r => r.Length <= 42 || !r.Contains(' '))));
        Assert.All(cues.Zip(cues.Skip(1)), p => Assert.True(p.First.To <= p.Second.From + 1e-9));
        Assert.True(cues.Count > 100);
    }

    /// <summary>What could end a cue or a tag in it stays text.</summary>
    [Theory]
    [InlineData("Less than 5 < 6 & more, --> not an arrow.")]
    [InlineData("<v Nobody>&lt;b&gt;")]
    [InlineData("Averyveryveryveryveryveryveryveryveryverylongword.")]
    public void Write_LettersOfTheFormat_StayText(string text)
    {
        (double from, double to, string read) = Assert.Single(Read(WebVtt.Write([new("a --> b", text, 0, 3600.5)])));
        Assert.Equal(text, read.Replace('\n', ' '));
        Assert.Equal((0, 3600.5), (from, to));
    }

    [Fact]
    public void Of_Question_LeavesTimeForTheAnswer()
    {
        ClassBook book = Books.Curlew.Book;
        var spoken = Narration.Of(LessonPlanner.Plan(book, new(new("gauge", ["cab fuel gauge"]), 3, Depth.Know))!);
        int asked = spoken.IndexOf(spoken.Single(l => l.Text == book.Items["cab fuel gauge"].Questions[0].Asked));
        Assert.Equal(6, spoken[asked + 1].From - spoken[asked].To, 1e-9);
    }

    /// <summary>Written from the specification, apart from the writer.</summary>
    private static List<(double From, double To, string Text)> Read(string file)
    {
        string[] blocks = file.Split("\n\n");
        Assert.Equal("WEBVTT", blocks[0]);
        List<(double, double, string)> cues = [];
        foreach (string block in blocks.Skip(1).Where(b => !b.StartsWith("NOTE", StringComparison.Ordinal)))
        {
            string[] lines = block.TrimEnd('\n').Split('\n');
            int at = Array.FindIndex(lines, l => l.Contains("-->", StringComparison.Ordinal));
            Match times = Times().Match(lines[at]);
            Assert.True(times.Success, lines[at]);
            string payload = string.Join('\n', lines[(at + 1)..]);
            Assert.DoesNotContain("-->", payload, StringComparison.Ordinal);
            Assert.DoesNotMatch("<|&(?!amp;|lt;|gt;)", payload);
            cues.Add((Seconds(times.Groups[1].Value), Seconds(times.Groups[2].Value), System.Net.WebUtility.HtmlDecode(payload)));
        }

        return cues;
    }

    private static double Seconds(string time) => TimeSpan.ParseExact(time, @"hh\:mm\:ss\.fff", CultureInfo.InvariantCulture).TotalSeconds;

    [GeneratedRegex(@"^(\d{2,}:[0-5]\d:[0-5]\d\.\d{3}) --> (\d{2,}:[0-5]\d:[0-5]\d\.\d{3})$")]
    private static partial Regex Times();
}
