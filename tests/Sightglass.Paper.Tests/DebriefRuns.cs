using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Time;
using Sightglass.Book.Model;
using Sightglass.Paper.Papers;
using Sightglass.Plant.Plans;
using Sightglass.Training.Debrief;
using Sightglass.Training.Drills;
using Sightglass.World;
using Sightglass.World.Records;

namespace Sightglass.Paper.Tests;

/// <summary>A leak at a stand, worked badly: one valve is closed, and it is said to be done.</summary>
internal static class DebriefRuns
{
    public static DebriefFacts Facts { get; } = new("A. Trainee", 7, "drill-0007.jsonl", new(2026, 11, 26), 1, 3)
    {
        Observed = [("keeps three points of contact on the steps", "go"), ("repeats the radio message", "no go"), ("keeps clear of the rail", "not seen")],
        Coached = ["Look at the foot of every compartment before you touch a valve.", "Say who you are before you say what you see."],
        Agreement = "A. Assessor and B. Assessor: alike in 8 of 9 lines. Beyond chance: Gwet's AC1 0.86, Cohen's kappa 0.61. Figures of fewer than 30 lines say little.",
    };

    public static DebriefFilm Run(ClassBook book)
    {
        DiagnosticList found = [];
        Fleet fleet = Fleet.Compile(book, found)!;
        DrillVariants variants = new(fleet, book.Drills["a compartment leaks at a stand"]);
        BoundDrill drill = variants.For(new(1, 3), found)!;
        (WorldAction Act, double At)[] acts =
        [
            (new WorldAction.Walk(drill.Person, "fuel panel, right"), 20),
            (new WorldAction.TakeHint(drill.Person), 200),
            (new WorldAction.Operate(drill.Person, "aft supply valve", "closed"), 240),
            (new WorldAction.Tell(drill.Person, "conductor", "a compartment leaks"), 300),
            (new WorldAction.Declare(drill.Person), 900),
        ];
        SessionRecord record = new(
            new(RecordHeader.CurrentFormat, book.Title, "", DrillReplay.StartOf(drill, 1, 3)),
            [.. acts.Select(a => new RecordLine(SimTime.FromSeconds(a.At).Ticks, a.Act)), new(SimTime.FromSeconds(1510).Ticks)]);
        return DebriefReplay.Run(drill, record);
    }
}
