using System.Text.RegularExpressions;
using Sightglass.Cli;

namespace Sightglass.Cli.Tests;

public sealed partial class LessonVerbTests
{
    [Fact]
    public async Task Lesson_InStations_TellsTimesProtectionKitAndFallback()
    {
        Call call = await Call.Of("lesson", "fuel for a crew", "--people", "10", "--stations", "3", "--minutes", "120");
        Assert.Equal(ExitCode.Good, call.Exit);
        foreach (string says in new[] { "10 people in 3 groups of up to 4", "STATION 3", "To arrange", "Wheel chock, before anybody touches", "a bucket", "Ask: ", "If the machine is taken away", "qualified people decide" })
        {
            Assert.Contains(says, call.Output, StringComparison.Ordinal);
        }

        Assert.DoesNotContain("more than there are", call.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Lesson_TooLong_SaysByHowMuchAndWhere()
    {
        Call call = await Call.Of("lesson", "all", "--depth", "repair", "--minutes", "60");
        Assert.Matches(@"That\s+is\s+\d+\s+min\s+more\s+than\s+there\s+are", call.Output);
        Assert.Matches(@"The\s+longest\s+stops:", call.Output);
    }

    /// <summary>The page stands alone (nothing is fetched), every tag that is opened is closed, and names are made safe.</summary>
    [Fact]
    public async Task Lesson_AsAPage_StandsAloneWithSignInSheet()
    {
        using ScratchFolder scratch = new();
        Call call = await Call.Of("lesson", "first look", "--people", "7", "--html", scratch.At("lesson.html"), "--vtt", scratch.At("lesson.vtt"));
        Assert.StartsWith("WEBVTT\n\nNOTE cab steps, right\n\n1\n00:00:00.000 --> ", await File.ReadAllTextAsync(scratch.At("lesson.vtt")), StringComparison.Ordinal);
        Assert.Equal(ExitCode.Good, call.Exit);
        string page = await File.ReadAllTextAsync(scratch.At("lesson.html"));
        Assert.DoesNotContain("http://", page.Replace("http://www.w3.org/2000/svg", "", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.DoesNotContain("https://", page, StringComparison.Ordinal);
        Assert.Contains("Sign-in sheet", page, StringComparison.Ordinal);
        Assert.Equal(7 + 2, Regex.Count(page, "<tr class=\"empty\">"));
        Assert.Contains("class=\"plan-number\"", page, StringComparison.Ordinal);
        string[] pictures = [.. Regex.Matches(page, "<img [^>]+>").Select(m => m.Value)];
        Assert.NotEmpty(pictures);
        Assert.All(pictures, p => Assert.Matches("^<img src=\"data:image/[a-z+]+;base64,[A-Za-z0-9+/=]+\" alt=\"[^\"]{20,}\"/>$", p));
        string[] alone = ["meta", "circle", "path", "rect", "line", "polyline"];
        Stack<string> open = new();
        foreach (Match tag in Tag().Matches(page[page.IndexOf("<html", StringComparison.Ordinal)..]))
        {
            string name = tag.Groups["name"].Value;
            if (tag.Value.StartsWith("</", StringComparison.Ordinal))
            {
                Assert.Equal(open.Pop(), name);
            }
            else if (!tag.Value.EndsWith("/>", StringComparison.Ordinal) && !alone.Contains(name))
            {
                open.Push(name);
            }
        }

        Assert.Empty(open);
    }

    [Theory]
    [InlineData("--people, --stations and --words are 1 or more", "lesson", "--people", "0")]
    [InlineData("did you mean `engineer`", "lesson", "--audience", "enginer")]
    [InlineData("did you mean `first look`", "lesson", "first lock")]
    public async Task Lesson_WrongValue_SaysWhatWouldBeRight(string says, params string[] arguments)
    {
        Call call = await Call.Of(arguments);
        Assert.Equal(ExitCode.WrongUse, call.Exit);
        Assert.Contains(says, call.Error, StringComparison.Ordinal);
    }

    [GeneratedRegex("</?(?<name>[a-z][a-z0-9]*)[^>]*>")]
    private static partial Regex Tag();
}
