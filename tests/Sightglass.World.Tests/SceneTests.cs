using System.Collections.Immutable;
using System.Runtime.Intrinsics.X86;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Time;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;
using Sightglass.World.Records;
using Sightglass.World.Snapshots;

namespace Sightglass.World.Tests;

/// <summary>
/// What is shown of a run, for every system and for trains: the same hash however often it is looked at, wherever it is killed and taken up, done again from a record, in one lane or in
/// eight, with whatever instructions the processor has. Live against headless is in Web.Tests, killed processes in Cli.Tests, the renamed book in Trials.Tests.
/// </summary>
public sealed class SceneTests(ITestOutputHelper output)
{
    private const string Expected = "SIGHTGLASS_TEST_SCENES";
    private const int Kills = 40;

    private static readonly Lazy<string> s_ends = new(() => string.Join('\n', Scene.All.Select(s => $"{s.Situation}: {Headless(s)}")));

    public static TheoryData<string> Scenes => [.. Scene.All.Select(s => s.Situation)];

    [Theory]
    [MemberData(nameof(Scenes))]
    public void Run_EveryTenthOfASecondShowingAllOrEveryMinute_SameHash(string situation)
    {
        Scene scene = Scene.Of(situation);
        Assert.Equal(Looked(scene, 60), Looked(scene, 0.1));
    }

    /// <summary>A machine that stands takes few steps in each of its networks (kernel's contract: under 300 in ten hours; of a machine alone under 300 in all of them together), and hardly more in a hundred hours than in ten.</summary>
    [Theory]
    [InlineData("idle, nothing wrong")]
    [InlineData("standing with air")]
    [InlineData("local train, charged")]
    [InlineData("night mail, charged")]
    [InlineData("double-headed express, charged")]
    public void Idle_TenHoursAndAHundred_FewSteps(string situation)
    {
        Scene idle = new(situation, 0, 36_000);
        using LaneBank bank = new(PlanOf(idle));
        World world = Begin(bank, 0, idle, 0);
        world.RunTo(SimTime.FromSeconds(36_000));
        long[] ten = Steps();
        world.RunTo(SimTime.FromSeconds(360_000));
        long[] hundred = Steps();
        output.WriteLine($"{string.Join(" and ", ten)} steps in 10 h, {string.Join(" and ", hundred)} in 100 h");
        Assert.True(world.Trouble is null, world.Trouble);
        Assert.All(ten, n => Assert.True(n < 300, $"{n} steps"));
        Assert.True(Books.Curlew.Book.Situations[situation].Train is not null || ten.Sum() < 300, $"{ten.Sum()} steps of the whole machine");
        Assert.All(ten.Zip(hundred), n => Assert.True(n.Second < 2 * n.First, $"{n.Second} steps in 100 h, {n.First} in 10 h"));

        long[] Steps() => [.. bank.Plan.Stepped.Select(n => bank.Group(n).Steps(0))];
    }

    [Theory]
    [MemberData(nameof(Scenes))]
    public void Restore_KilledAtAnyMoment_SameHash(string situation)
    {
        Scene scene = Scene.Of(situation);
        Plan plan = PlanOf(scene);
        string expected = Headless(scene);
        Random chance = new(11);
        LaneBank memory = new(plan);
        World current = Begin(memory, 0, scene, scene.Number);
        foreach (double at in Enumerable.Range(0, Kills).Select(_ => chance.NextDouble() * scene.Seconds).Order().ToArray())
        {
            current.RunTo(SimTime.FromSeconds(at));
            string kept = current.Save().ToJson();
            memory.Dispose();
            memory = new(plan);
            current = new(memory, chance.Next(8));
            current.Restore(WorldSnapshot.FromJson(kept));
        }

        Assert.Equal(expected, End(current, scene));
        memory.Dispose();
    }

    [Theory]
    [MemberData(nameof(Scenes))]
    public void Replay_OfItsRecord_SameHash(string situation)
    {
        Scene scene = Scene.Of(situation);
        RecordHeader header = new(RecordHeader.CurrentFormat, "Curlew", "", new(null, situation, 1, scene.Number));
        ImmutableArray<RecordLine> lines = [.. Deeds(scene).Select(d => new RecordLine(d.At.Ticks, d.Action)), new(SimTime.FromSeconds(scene.Seconds).Ticks)];
        Assert.Equal(Headless(scene).Split(' ')[0], $"{Replay.Hash(PlanOf(scene), new(header, lines)):x16}");
    }

    /// <summary>Eight cases side by side, each in another one's lane as well, and each alone.</summary>
    [Theory]
    [MemberData(nameof(Scenes))]
    public void Lanes_OneAloneOrEightTogether_SameHashes(string situation)
    {
        Scene scene = Scene.Of(situation);
        string[] together = Together(scene, 0);
        string[] turned = Together(scene, 3);
        Assert.Equal(together, turned);
        foreach (int alone in new[] { 0, 5 })
        {
            using LaneBank bank = new(PlanOf(scene));
            Assert.Equal(together[alone], End(Begin(bank, 7 - alone, scene, (ulong)alone), scene));
        }
    }

    /// <summary>This test starts itself again with instruction sets switched off and hands over what it found, and the second process compares.</summary>
    [Theory]
    [InlineData("DOTNET_EnableAVX512")]
    [InlineData("DOTNET_EnableAVX2")]
    public async Task Run_InstructionSetOff_SameHashes(string setting)
    {
        string found = s_ends.Value;
        if (Environment.GetEnvironmentVariable(Expected) is { } expected)
        {
            Assert.False(Environment.GetEnvironmentVariable("DOTNET_EnableAVX512") == "0" && Avx512F.IsSupported, "AVX-512 was to be off");
            Assert.False(Environment.GetEnvironmentVariable("DOTNET_EnableAVX2") == "0" && Avx2.IsSupported, "AVX2 was to be off");
            Assert.Equal(expected, found);
            return;
        }

        output.WriteLine(found);
        string told = await ChildTest.Again(typeof(SceneTests), nameof(Run_InstructionSetOff_SameHashes), (setting, "0"), (Expected, found));
        Assert.Contains("succeeded: 2", told, StringComparison.Ordinal);
    }

    private static Plan PlanOf(Scene scene) => Books.CurlewFleet.For(null, Books.Curlew.Book.Situations[scene.Situation].Train)!;

    private static IEnumerable<(SimTime At, WorldAction Action)> Deeds(Scene scene) =>
        scene.Deeds.Select(d => (SimTime.FromSeconds(d.At), (WorldAction)new WorldAction.Operate(-1, d.Item, d.Position)));

    private static World Begin(LaneBank bank, int lane, Scene scene, ulong number)
    {
        World world = new(bank, lane);
        DiagnosticList found = [];
        Assert.True(Replay.Begin(world, new(null, scene.Situation, 1, number), found), string.Join('\n', found));
        foreach ((SimTime at, WorldAction action) in Deeds(scene))
        {
            world.Do(action, at);
        }

        return world;
    }

    private static string Headless(Scene scene)
    {
        using LaneBank bank = new(PlanOf(scene));
        return End(Begin(bank, 0, scene, scene.Number), scene);
    }

    private static string End(World world, Scene scene)
    {
        world.RunTo(SimTime.FromSeconds(scene.Seconds));
        return Told(world);
    }

    private static string Told(World world)
    {
        Assert.True(world.Trouble is null, world.Trouble);
        world.CutHere();
        return $"{world.Hash:x16} {world.Steps}";
    }

    private static string Looked(Scene scene, double every)
    {
        using LaneBank bank = new(PlanOf(scene));
        World world = Begin(bank, 0, scene, scene.Number);
        long n = 0;
        world.OnSample = w =>
        {
            foreach (Signal signal in w.Plan.Signals)
            {
                _ = w.Value(signal);
            }

            w.SampleAt(SimTime.FromSeconds(++n * every));
        };
        world.SampleAt(SimTime.Zero);
        return End(world, scene);
    }

    /// <summary>Cases 0…7 in lanes of one bank, turned round by some; told by case.</summary>
    private static string[] Together(Scene scene, int turn)
    {
        using LaneBank bank = new(PlanOf(scene));
        World[] worlds = [.. Enumerable.Range(0, 8).Select(number => Begin(bank, (number + turn) % 8, scene, (ulong)number))];
        bank.RunTogether(worlds, SimTime.FromSeconds(scene.Seconds));
        return [.. worlds.Select(Told)];
    }
}
