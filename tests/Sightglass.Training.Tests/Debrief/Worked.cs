using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Time;
using Sightglass.Training.Debrief;
using Sightglass.Training.Drills;
using Sightglass.World;
using Sightglass.World.Records;

namespace Sightglass.Training.Tests.Debrief;

/// <summary>A short drill that somebody worked, once well and once not, as records.</summary>
internal static class Worked
{
    public const string Name = "a headlight is dark";

    private static readonly Lazy<BoundDrill> s_drill = new(() =>
    {
        DiagnosticList found = [];
        return DrillBinder.Bind(Books.CurlewFleet, Books.Curlew.Book.Drills[Name], found) ?? throw new InvalidOperationException(string.Join('\n', found));
    });

    private static readonly Lazy<ulong> s_bright = new(() => Enumerable.Range(0, 60).Select(i => (ulong)i).First(i =>
        !DrillTrial.Run(Drill, new(1, i), [], tell: true).Journal.Any(j => j.Text.StartsWith("Truth: ", StringComparison.Ordinal))));

    private static readonly Lazy<DebriefFilm> s_passed = new(() => DebriefReplay.Run(Drill, Passed));

    public static BoundDrill Drill => s_drill.Value;

    /// <summary>The breaker is put on, it is reported, and said to be done.</summary>
    public static SessionRecord Passed => Record(
        130, (new WorldAction.Walk(0, Where), 1), (new WorldAction.Operate(0, "headlight breaker", "on"), 60), (new WorldAction.Report(0, "it is lit"), 80), (new WorldAction.Tell(0, "mechanical desk", "the headlight is lit"), 90), (new WorldAction.Declare(0), 100));

    /// <summary>Something that is not so is reported.</summary>
    public static SessionRecord Failed => Record(
        130, (new WorldAction.Walk(0, Where), 1), (new WorldAction.Operate(0, "headlight breaker", "on"), 60), (new WorldAction.Report(0, "there is a short behind the breaker"), 80), (new WorldAction.Declare(0), 100));

    public static DebriefFilm Film => s_passed.Value;

    private static string Where => Drill.Plan.Book.Items["headlight breaker"].Places[0];

    public static SessionRecord Record(double end, params (WorldAction Act, double At)[] acts) => new(
        new(RecordHeader.CurrentFormat, Drill.Plan.Book.Title, "", DrillReplay.StartOf(Drill, 1, s_bright.Value)),
        [.. acts.Select(a => new RecordLine(SimTime.FromSeconds(a.At).Ticks, a.Act)), new(SimTime.FromSeconds(end).Ticks)]);
}
