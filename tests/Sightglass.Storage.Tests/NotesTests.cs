using Sightglass.Book.Model;
using Sightglass.Storage.Lessons;
using Sightglass.Storage.Notes;
using Sightglass.Tests.Support;
using Sightglass.Training.Defects;
using Sightglass.Training.Lessons;
using Sightglass.Training.Proposals;
using Sightglass.Training.Questions;

namespace Sightglass.Storage.Tests;

public sealed class NotesTests : IDisposable
{
    private static readonly ClassBook s_book = Books.Curlew.Book;

    private readonly TemporaryFolder _folder = new();
    private readonly FixedClock _clock = new();
    private readonly DataFolder _data;

    public NotesTests() => _data = DataFolder.Open(_folder.Path);

    public void Dispose()
    {
        _data.Dispose();
        _folder.Dispose();
    }

    [Fact]
    public void Question_FromAskedToTheBook()
    {
        QuestionDesk desk = new(_data, _clock);
        Assert.Null(desk.Ask(s_book, " Which way is open? ", "horn cutout cock", "a trainee", "the shop", Day(14)));
        Assert.Null(desk.Ask(s_book, "Who has the key?", null, "", "me", Day(3)));
        Assert.Equal(["Who has the key?", "Which way is open?"], desk.All(s_book).Select(q => q.Text));
        OpenQuestion question = desk.All(s_book)[1];
        Assert.Equal("Only an answer about an item of the book can go into it.", desk.Propose(s_book, question.Id, "operate"));
        Assert.Null(desk.Answer(question.Id, "In line with the pipe.", "the shop"));
        Assert.Contains("answered by the shop meanwhile", desk.Answer(question.Id, "Across.", "another"), StringComparison.Ordinal);
        Assert.Null(desk.Propose(s_book, question.Id, "operate"));
        Assert.Equal("It is proposed already.", desk.Propose(s_book, question.Id, "know"));
        using RecordsContext records = _data.Records();
        Proposal proposal = records.Proposals.Single();
        Assert.Equal(("horn cutout cock", "operate", ProposalOrigin.Question), (proposal.Target, proposal.Property, proposal.Origin));
        Assert.Equal($"{s_book.Items["horn cutout cock"].Texts.Operate} In line with the pipe.", proposal.Becomes);
        Assert.False(desk.All(s_book)[1].IsLate(Day(100)));
        Assert.True(desk.All(s_book)[0].IsLate(Day(4)));
        Assert.False(desk.All(s_book)[0].IsLate(Day(3)));
    }

    [Theory]
    [InlineData("", null, "me", 1, "as it was asked")]
    [InlineData("Why?", null, " ", 1, "nobody’s")]
    [InlineData("Why?", null, "me", -1, "in the past")]
    [InlineData("Why?", "horn cutout cok", "me", 1, "Did you mean \"horn cutout cock\"")]
    public void Question_ThatCannotBeFoundAgain_IsNotKept(string text, string? item, string owner, int days, string why)
    {
        QuestionDesk desk = new(_data, _clock);
        Assert.Contains(why, desk.Ask(s_book, text, item, "", owner, Day(days)), StringComparison.Ordinal);
        Assert.Empty(desk.All(s_book));
    }

    [Fact]
    public void Defect_FromFoundToMended_IsThereOnTheDaysBetween()
    {
        DefectDesk desk = new(_data, _clock);
        Assert.Null(desk.Find(s_book, "4107", "aft sight glass, right", "Cracked.", "Read the left one.", "day shift", Day(-3)));
        Defect defect = desk.All(s_book).Single();
        Assert.Contains("between the day it was found", desk.Mend(defect.Id, "the shop", Day(-4)), StringComparison.Ordinal);
        Assert.Null(desk.Mend(defect.Id, "the shop", Day(0)));
        Assert.Contains("meanwhile", desk.Mend(defect.Id, "another", Day(0)), StringComparison.Ordinal);
        Assert.Equal([0, 1, 1, 1, 0], new[] { -4, -3, -2, -1, 0 }.Select(d => desk.Of(s_book, "4107", Day(d)).Count));
        Assert.Empty(desk.Of(s_book, "4101", Day(-1)));
    }

    [Theory]
    [InlineData("9999", null, "Cracked.", "me", 0, "no road number 9999")]
    [InlineData("4107", "aft sight glas, right", "Cracked.", "me", 0, "Did you mean \"aft sight glass, right\"")]
    [InlineData("4107", null, "", "me", 0, "what does not work")]
    [InlineData("4107", null, "Cracked.", "", 0, "who found it")]
    [InlineData("4107", null, "Cracked.", "me", 1, "after today")]
    public void Defect_ThatNobodyCanRelyOn_IsNotKept(string number, string? item, string text, string by, int days, string why)
    {
        DefectDesk desk = new(_data, _clock);
        Assert.Contains(why, desk.Find(s_book, number, item, text, "", by, Day(days)), StringComparison.Ordinal);
        Assert.Empty(desk.All(s_book));
    }

    [Fact]
    public void Lesson_KeptEditedAndDropped()
    {
        LessonDesk desk = new(_data, _clock);
        (Guid? id, string? why) = desk.Keep(s_book.Title, " Monday ", "shows=fuel", "me");
        Assert.Null(why);
        Assert.Contains("already", desk.Keep(s_book.Title, "Monday", "shows=all", "me").Why, StringComparison.Ordinal);
        Assert.Contains("name", desk.Keep(s_book.Title, " ", "shows=all", "me").Why, StringComparison.Ordinal);
        desk.Edit(id!.Value, LessonEditSort.Says, "horn", "It sounds.", "It shouts.", "me");
        desk.Edit(id.Value, LessonEditSort.Says, "horn", "It sounds.", "It yells.", "me");
        desk.Edit(id.Value, LessonEditSort.Says, "horn", "", "Try it last.", "me");
        Assert.Equal(["It yells.", "Try it last."], desk.EditsOf(id.Value).Select(e => e.Becomes));
        desk.PutOn(desk.EditsOf(id.Value)[0].Id, "It sounds loud.");
        Assert.Equal("It sounds loud.", desk.EditsOf(id.Value)[0].Was);
        desk.Edit(id.Value, LessonEditSort.Says, "horn", "It sounds loud.", "It sounds loud.", "me");
        desk.Undo(desk.EditsOf(id.Value).Single().Id);
        Assert.Empty(desk.EditsOf(id.Value));
        desk.Edit(id.Value, LessonEditSort.Item, "horn", "", "", "me");
        desk.Ask(id.Value, "shows=all");
        Assert.Equal("shows=all", desk.Find(id.Value)!.Asks);
        desk.Drop(id.Value);
        Assert.Null(desk.Find(id.Value));
        Assert.Empty(desk.EditsOf(id.Value));
    }

    private DateOnly Day(int days) => DateOnly.FromDateTime(_clock.GetLocalNow().Date).AddDays(days);

    /// <summary>A leap day, in a zone where it is tomorrow already.</summary>
    private sealed class FixedClock : TimeProvider
    {
        private int _calls;

        public override TimeZoneInfo LocalTimeZone { get; } = TimeZoneInfo.CreateCustomTimeZone("ahead", TimeSpan.FromHours(9), "ahead", "ahead");

        public override DateTimeOffset GetUtcNow() => new DateTimeOffset(2028, 2, 28, 20, 0, 0, TimeSpan.Zero).AddMilliseconds(_calls++);
    }
}
