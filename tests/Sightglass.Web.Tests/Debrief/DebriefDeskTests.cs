using Sightglass.Basics.Time;
using Sightglass.Training.Debrief;
using Sightglass.Training.Evaluation;
using Sightglass.Web.Debrief;
using Sightglass.Web.Room;
using Sightglass.World;

namespace Sightglass.Web.Tests.Debrief;

/// <summary>A drill of the room that was worked through its pages' core, and what is made of its record afterwards.</summary>
public sealed class DebriefDeskTests : IDisposable
{
    private const string Headlight = "a headlight is dark";

    private readonly string _folder = Directory.CreateTempSubdirectory("debrief").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    /// <summary>The sheet that fell while it was worked is the one that its record gives afterwards, also after a restart.</summary>
    [Fact]
    public async Task Of_ADrillThatWasWorked_SameSheetAsItFell()
    {
        EvaluationSheet fell;
        using (TrainingRoom room = new(Shelves.Curlew, _folder, TimeProvider.System))
        using (DebriefDesk desk = new(room))
        {
            RoomDrill drill = Work(room);
            fell = drill.Last!.Sheet!;
            (DebriefFilm? film, string? why) = await desk.Of(drill, CancellationToken.None);
            Assert.Null(why);
            Assert.Equal(Text(fell), Text(film!.Result.Sheet));
            Assert.Same(film, (await desk.Of(drill, CancellationToken.None)).Film);
            DebriefMoment exact = (await desk.At(drill, SimTime.FromSeconds(30), CancellationToken.None))!;
            Assert.Equal(30, exact.At.Seconds, 6);
            Assert.Equal("A. Trainee", DebriefFiles.Facts(drill, film).Trainee);
        }

        using TrainingRoom again = new(Shelves.Curlew, _folder, TimeProvider.System);
        using DebriefDesk after = new(again);
        Assert.Equal(Text(fell), Text((await after.Of(after.Find(1)!, CancellationToken.None)).Film!.Result.Sheet));
        Assert.Equal("A. Trainee", after.Find(1)!.Worked.Single().Value);
        Assert.Null(after.Find(2));
    }

    [Fact]
    public async Task Of_ADrillWhoseRecordIsNotKept_SaysSo()
    {
        using TrainingRoom room = new(Shelves.Curlew, null, TimeProvider.System);
        using DebriefDesk desk = new(room);
        (DebriefFilm? film, string? why) = await desk.Of(Work(room), CancellationToken.None);
        Assert.Null(film);
        Assert.Equal("Its record is not kept, or cannot be read.", why);
    }

    /// <summary>What two assessors marked is kept through a restart, and told of how many.</summary>
    [Fact]
    public void Mark_ByTwoAssessors_IsKeptAndToldOfHowMany()
    {
        using (TrainingRoom room = new(Shelves.Curlew, _folder, TimeProvider.System))
        {
            RoomDrill drill = Work(room);
            Assert.Contains("Write your name first", room.Mark(drill, " ", "x", Verdict.Go), StringComparison.Ordinal);
            foreach ((string line, Verdict first, Verdict second) in new[] { ("one", Verdict.Go, Verdict.Go), ("two", Verdict.Go, Verdict.NoGo), ("three", Verdict.NoGo, Verdict.NoGo), ("four", Verdict.Go, Verdict.NotSeen) })
            {
                Assert.Null(room.Mark(drill, "Abel", line, Verdict.NotSeen));
                Assert.Null(room.Mark(drill, "Abel", line, first)); // the last word holds
                Assert.Null(room.Mark(drill, "Berta", line, second));
            }
        }

        using TrainingRoom again = new(Shelves.Curlew, _folder, TimeProvider.System);
        RoomDrill kept = again.Drills[0];
        Assert.Equal(new Agreement(1, 1, 0, 1), AgreementWords.Between(kept, "Abel", "Berta"));
        string said = Assert.Single(AgreementWords.Of(kept));
        Assert.StartsWith("Abel and Berta: alike in 2 of 3 lines.", said, StringComparison.Ordinal);
        Assert.Contains("Figures of fewer than 30 lines say little.", said, StringComparison.Ordinal);
        Assert.DoesNotContain("%", said, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("12:07", 727.0)]
    [InlineData("1:02:30.5", 3750.5)]
    [InlineData("0:00", 0.0)]
    [InlineData("12", null)]
    [InlineData("1:75", null)]
    [InlineData("-1:00", null)]
    [InlineData("a:b", null)]
    [InlineData("999:00:00", null)]
    [InlineData(null, null)]
    public void TryRead_Moments_AreReadOrNot(string? text, double? seconds) => Assert.Equal(seconds, MomentText.TryRead(text)?.Seconds);

    private static RoomDrill Work(TrainingRoom room)
    {
        Assert.Null(room.Join("A. Trainee", out Seat? seat, out _));
        using IDisposable page = room.Open(seat!);
        Assert.Null(room.Begin(Headlight, 1, 2, [seat!]));
        RoomDrill drill = seat!.Drill!;
        DrillSession session = drill.Session!;
        session.Release(HoldReason.Brief);
        string breaker = session.Plan.Book.Items["headlight breaker"].Places[0];
        Assert.Null(session.Act(new WorldAction.Walk(session.Drill.Person, breaker)));
        session.Forward(SimTime.FromSeconds(60));
        Assert.Null(session.Act(new WorldAction.Operate(session.Drill.Person, "headlight breaker", "on")));
        session.Forward(SimTime.FromSeconds(90));
        Assert.Null(session.Act(new WorldAction.Declare(session.Drill.Person)));
        session.Forward(SimTime.FromSeconds(2000));
        Assert.Null(room.End(drill));
        return drill;
    }

    private static string Text(EvaluationSheet sheet) => string.Join('\n', sheet.Lines.Select(l => $"{l.IsMet} {l.Said}: {l.Shown} {l.At?.Ticks}")) + $"\n{sheet.Points} {sheet.IsPassed}";
}
