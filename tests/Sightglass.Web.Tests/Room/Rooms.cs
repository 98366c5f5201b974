using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Draws;
using Sightglass.Book.Model;
using Sightglass.Training.Drills;
using Sightglass.Web.Room;
using Sightglass.World;
using Sightglass.World.Records;
using Sightglass.World.Situations;

namespace Sightglass.Web.Tests.Room;

/// <summary>Drills of the demo book, bound once, and somebody who does whatever can be done.</summary>
internal static class Rooms
{
    private static readonly Dictionary<string, DrillVariants> s_variants = [];
    private static readonly DrawKey s_key = DrawKey.Of("room");

    public static BoundDrill Bind(string name, ulong seed = 1, ulong number = 0)
    {
        lock (s_variants)
        {
            DrillVariants variants = s_variants.TryGetValue(name, out DrillVariants? known) ? known : s_variants[name] = new(Shelves.Curlew.Now.Fleet, Shelves.Curlew.Book.Drills[name]);
            DiagnosticList found = [];
            return variants.For(new CaseDraws(seed, number), found) ?? throw new InvalidOperationException(string.Join('\n', found));
        }
    }

    public static DrillSession Begin(BoundDrill drill, ManualClock clock, string? path = null, ulong number = 0)
    {
        SessionStart start = DrillReplay.StartOf(drill, 1, number);
        RecordFile? file = path is null ? null : RecordFile.Create(path, new(RecordHeader.CurrentFormat, drill.Plan.Book.Title, Shelves.Curlew.Hash, start));
        DrillSession session = DrillSession.Begin(drill, start, clock, file, [])!;
        session.Release(HoldReason.Brief);
        return session;
    }

    /// <summary>Something that the trainee could wish for now, drawn.</summary>
    public static WorldAction Wish(DrillSession session, ulong seed, int number)
    {
        BoundDrill drill = session.Drill;
        int person = drill.Person;
        Sight sight = session.Current.Sights[person];
        WorldAction[] can =
        [
            .. sight.Items.Where(i => i.Position is not null).SelectMany(i => drill.Plan.Book.Items[i.Name].Positions.Select(p => new WorldAction.Operate(person, i.Name, p))),
            .. drill.Plan.Book.Places.Keys.Select(p => new WorldAction.Walk(person, p)),
            .. drill.Plan.Book.Protections.Values.Where(p => p.Sort == ProtectionSort.Asked).Select(p => new WorldAction.Ask(person, p.Name)),
            new WorldAction.Tell(person, "mechanical desk", "here"),
            new WorldAction.TakeHint(person),
        ];
        return can[(int)(Draw.Uniform(seed, (ulong)number, s_key) * can.Length)];
    }

    /// <summary>Works for a while: looks every so often, and does something now and then.</summary>
    public static void Work(DrillSession session, ManualClock clock, ulong seed, int from, int to)
    {
        for (int i = from; i < to && !session.Current.IsOver; i++)
        {
            for (int k = 0; k < 4; k++)
            {
                clock.Pass(0.05 + (Draw.Uniform(seed, (ulong)((i * 4) + k), s_key.At(1)) * 0.9));
                session.Beat();
            }

            _ = session.Act(Wish(session, seed, i));
        }
    }

    public static string Text(Sightglass.Training.Evaluation.EvaluationSheet sheet) =>
        string.Join('\n', sheet.Lines.Select(l => $"{l.IsMet} {l.Said}: {l.Shown} {l.At?.Ticks}")) + $"\n{sheet.Points} {sheet.IsPassed} {sheet.EndedAt?.Ticks}";
}
