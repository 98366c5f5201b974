using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Time;
using Sightglass.Cards;
using Sightglass.Cards.Programs;
using Sightglass.Cards.Tree;
using Sightglass.Plant.Plans;
using Sightglass.World.Runs;
using Sightglass.World.Situations;
using Sightglass.World.Snapshots;

namespace Sightglass.World.Tests;

/// <summary>
/// Runs of cards broken off at 300 moments (on the way, waiting, in the middle of a step), kept in files and taken up in a new process: this test starts
/// itself again with the folder of the files, and that process says how each run ended.
/// </summary>
public sealed class TakenUpElsewhereTests
{
    private const string Folder = "SIGHTGLASS_TEST_SNAPSHOTS";

    private static readonly (string Card, string Situation, ulong Case)[] s_runs =
    [
        ("empty-a-leaking-compartment", "leaking compartment", 7),
        ("prime-a-starved-engine", "starving engine", 2),
        ("reset-the-cut-off", "cut-off tripped", 5),
        ("true-quantity", "gauges disagree", 4),
        ("charge-from-nothing", "air from nothing", 1),
        ("brake-test-of-the-train", "before departure", 1),
    ];

    [Fact]
    public async Task Restore_InANewProcessAt300Moments_SameEnd()
    {
        if (Environment.GetEnvironmentVariable(Folder) is { } given)
        {
            TakeUpAll(given);
            return;
        }

        string folder = Path.Combine(AppContext.BaseDirectory, "scratch", Guid.NewGuid().ToString("n"));
        Directory.CreateDirectory(folder);
        try
        {
            (string[] ends, int walking, int waiting) = BreakOff(folder);
            Assert.True(walking > 3 && waiting > 20, $"{walking} on the way, {waiting} waiting");
            await ChildTest.Again(typeof(TakenUpElsewhereTests), (Folder, folder));
            Assert.Equal(ends, await File.ReadAllLinesAsync(Path.Combine(folder, "ends"), TestContext.Current.CancellationToken));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    /// <summary>Fifty files for each run, at moments of chance; how each run ends that was never broken off.</summary>
    private static (string[] Ends, int Walking, int Waiting) BreakOff(string folder)
    {
        Random chance = new(3);
        List<string> ends = [];
        (int walking, int waiting) = (0, 0);
        foreach ((string card, string situation, ulong number) in s_runs)
        {
            string end = EndOf(Begin(card, situation, number));
            double length = double.Parse(end.Split(' ')[1], System.Globalization.CultureInfo.InvariantCulture);
            World world = Begin(card, situation, number);
            foreach (double at in Enumerable.Range(0, 50).Select(i => chance.NextDouble() * (i % 2 == 0 ? length : Math.Min(length, 120))).Order())
            {
                world.RunTo(SimTime.FromSeconds(at));
                WorldSnapshot saved = world.Save();
                walking += saved.People.Any(p => p.WalkingTo >= 0) ? 1 : 0;
                waiting += saved.Sentinels.Any(s => s.Owner is >= 10 and < 100) ? 1 : 0;
                File.WriteAllText(Path.Combine(folder, $"{ends.Count:000} {card}, {situation}, {number}"), saved.ToJson());
                ends.Add(end);
            }
        }

        return ([.. ends], walking, waiting);
    }

    /// <summary>Eight files of a run at a time, each in a lane.</summary>
    private static void TakeUpAll(string folder)
    {
        List<string> ends = [];
        foreach (IGrouping<string, string> run in Directory.GetFiles(folder).Order(StringComparer.Ordinal).GroupBy(f => Path.GetFileName(f)[4..]))
        {
            string[] of = run.Key.Split(", ");
            Plan plan = PlanOf(of[1]);
            foreach (string[] files in run.Chunk(8))
            {
                using LaneBank bank = new(plan);
                World[] worlds = [.. files.Select((file, lane) => TakeUp(new(bank, lane), file, of[0]))];
                bank.RunTogether(worlds, SimTime.Never);
                ends.AddRange(worlds.Select(Told));
            }
        }

        File.WriteAllLines(Path.Combine(folder, "ends"), ends);
    }

    private static World TakeUp(World world, string file, string card)
    {
        world.Restore(WorldSnapshot.FromJson(File.ReadAllText(file)), Run(card, world.Plan));
        return world;
    }

    private static World Begin(string card, string situation, ulong number)
    {
        Plan plan = PlanOf(situation);
        World world = new(new LaneBank(plan), 0);
        SituationStart.Bind(plan, plan.Book.Situations[situation], [])!.Apply(world, 1, number);
        world.Begin(Run(card, plan));
        return world;
    }

    private static string EndOf(World world)
    {
        world.RunTo(SimTime.Never);
        return Told(world);
    }

    private static string Told(World world)
    {
        Outcome end = world.Run!.Outcome;
        return FormattableString.Invariant($"{end.Kind} {end.Time.Seconds:R} {end.Step} {end.Mechanism} {world.Steps} {end.Hash:x16}");
    }

    private static Plan PlanOf(string situation) => Books.CurlewFleet.For(null, Books.Curlew.Book.Situations[situation].Train)!;

    private static CardRun Run(string cardFile, Plan plan)
    {
        Card card = CardReader.Read(plan.Book.CardTexts.Single(t => Path.GetFileNameWithoutExtension(t.Path) == cardFile), plan.Book, [])!;
        ImmutableArray<BindingCase> cases = CardCompiler.Bindings(card, plan.Book);
        return new(cases.IsEmpty
            ? [new(null, CardCompiler.TryCompile(card, plan.Book, null, [])!)]
            : [.. cases.Select(c => new ProgramChoice(c.When, CardCompiler.TryCompile(card, plan.Book, c.Word, [])!))]);
    }
}
