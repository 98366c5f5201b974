using Sightglass.Book.Model;
using Sightglass.Cli.Books;
using Sightglass.Storage;
using Sightglass.Storage.Notes;

namespace Sightglass.Cli.Tests;

public sealed class DifferencesVerbTests
{
    [Fact]
    public async Task Differences_OfARoadNumber_TellsWhatHabitAndModification()
    {
        Call call = await Call.Of("differences", "--road-number", "4104");
        Assert.Equal(ExitCode.Good, call.Exit);
        foreach (string says in new[] { "1 item differs.", "SHOWS SOMETHING ELSE", "cab fuel gauge (cab)", "Habit: The same needle says something else", "M-09 cab gauge on three floats, since 2017-03-15", "qualified people decide" })
        {
            Assert.Contains(says, call.Output, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("No item that people meet differs.", "differences")]
    [InlineData("for people who know Curlew 4107", "differences", "--road-number", "4112", "--from-number", "4107")]
    [InlineData("NEW", "differences", "--book", "books/curlew", "--from", "books/smallest")]
    public async Task Differences_Between_Tells(string says, params string[] arguments)
    {
        Call call = await Call.Of(arguments);
        Assert.Equal(ExitCode.Good, call.Exit);
        Assert.Contains(says, call.Output, StringComparison.Ordinal);
    }

    /// <summary>What is known of one machine on a day: a modification to come is told apart, a defect only between the days it was found and mended.</summary>
    [Theory]
    [InlineData("2017-03-14", "MODIFICATIONS TO COME", "Cracked.")]
    [InlineData("2017-03-15", "MODIFICATIONS", "Cracked.")]
    [InlineData("2020-06-01", "cab fuel gauge: Cracked. Read the panel. Found by day shift on 2020-05-01", "TO COME")]
    [InlineData("2020-07-01", "MODIFICATIONS", "Cracked.")]
    public async Task Differences_OnADay_TellsHowTheMachineStands(string day, string says, string saysNot)
    {
        using ScratchFolder scratch = new();
        string folder = scratch.At("data");
        using (DataFolder data = DataFolder.Open(folder))
        {
            DefectDesk desk = new(data, TimeProvider.System);
            ClassBook book = BookInspection.Read(Path.Combine(Call.Root, "books", "curlew"), all: false).Book!;
            Assert.Null(desk.Find(book, "4104", "cab fuel gauge", "Cracked.", "Read the panel.", "day shift", new(2020, 5, 1)));
            Assert.Null(desk.Mend(desk.All(book).Single().Id, "the shop", new(2020, 7, 1)));
        }

        Call call = await Call.Of("differences", "--road-number", "4104", "--on", day, "--data", folder);
        Assert.Contains(says, call.Output, StringComparison.Ordinal);
        Assert.DoesNotContain(saysNot, call.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Differences_DataOpenElsewhere_ToldAndTheRestGoesOn()
    {
        using ScratchFolder scratch = new();
        using DataFolder open = DataFolder.Open(scratch.At("data"));
        Call call = await Call.Of("differences", "--road-number", "4104", "--data", open.Path);
        Assert.Equal(ExitCode.Good, call.Exit);
        Assert.Contains("Open defects are not told. The data folder", call.Error, StringComparison.Ordinal);
        Assert.Contains("1 item differs.", call.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Differences_OfAHabit_TellsThereHereAndWhatHurts()
    {
        Call call = await Call.Of("differences", "--habit", "one tank, one cock");
        Assert.Equal(ExitCode.Good, call.Exit);
        foreach (string says in new[] { "cab fuel gauge (cab)", "there: It showed all", "here: It shows the forward", "Habit: Whoever reads it alone" })
        {
            Assert.Contains(says, call.Output, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("--on wants a day", "differences", "--on", "yesterday")]
    [InlineData("did you mean `one tank, one cock`", "differences", "--habit", "one tank, one cok")]
    [InlineData("did you mean `4104`", "differences", "--from-number", "4014")]
    [InlineData("There is no folder `nowhere`", "differences", "--from", "nowhere")]
    public async Task Differences_WrongName_SaysWhatWouldBeRight(string says, params string[] arguments)
    {
        Call call = await Call.Of(arguments);
        Assert.Equal(ExitCode.WrongUse, call.Exit);
        Assert.Contains(says, call.Error, StringComparison.Ordinal);
    }
}
