using Sightglass.Basics.Time;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;
using Sightglass.World.Journal;
using Sightglass.World.People;
using Sightglass.World.Records;
using Sightglass.World.Snapshots;
using Sightglass.World.Tests.Trade;

namespace Sightglass.World.Tests.People;

/// <summary>What people do because somebody outside says so. A look, a sentence and an answer take 2, 6 and 15 s where the book says nothing (<see cref="HumanTimes"/>).</summary>
public sealed class HandsTests
{
    private const string Body = """
        book: Hands
        length: 20 m
        width: 3 m
        roles: { hand: { walks: 1.2 m/s, reacts in: 1 s }, guest: { walks: 1.2 m/s, reacts in: 1 s, goes to: [ahead] }, desk: { walks: 1 m/s, reacts in: 1 s, goes to: [] } }
        places:
          ahead: { x: 4 m, y: 2.4 m }
          far end: { x: 16 m, y: 2.4 m }
        systems: { air: { medium: brake, alive: yes } }
        items:
          receiver: { kind: reservoir, system: air, volume: 1 m^3, start pressure: 100 psi }
          free cock: { kind: hand valve, system: air, from: receiver, to: outside, diameter: 2 mm, who: [hand, guest], takes: 4 s, places: [ahead] }
          own cock: { kind: hand valve, system: air, from: receiver, to: outside, diameter: 2 mm, who: [hand], permission: desk, takes: 4 s, places: [ahead] }
          far cock: { kind: hand valve, system: air, from: receiver, to: outside, diameter: 2 mm, who: [hand], takes: 4 s, places: [far end] }
          door: { kind: described, positions: [open, shut], places: [ahead] }
        facts:
          it has fallen: { is: pressure of receiver < 90 psi }
        protections:
          standing still: { asked of: desk, text: Nothing moves. }
          tag: { locks: [free cock], text: A tag. }
          sign: { set at: [ahead], text: A sign. }
        situations:
          calm: { people: [ { role: hand, at: [ahead] }, { role: guest, at: [ahead] } ], answers: { after: 10 s, unanswered: 0 % } }
          deaf: { people: [ { role: hand, at: [ahead] } ], answers: { after: 10 s, unanswered: 100 % } }

        """;

    private static readonly Plan s_plan = Rig.Compile(Body);

    [Fact]
    public void Operate_ByAPerson_TakesAsLongAsTheBookSays()
    {
        using Rig rig = new(s_plan, "calm");
        rig.World.Do(new WorldAction.Operate(0, "free cock", "open"), SimTime.FromSeconds(1));
        Assert.Equal(0, rig.At(4.9, "flow of free cock"));
        Assert.IsType<WorldAction.Operate>(rig.World.People[0].Deed);
        Assert.True(rig.At(5.1, "flow of free cock") > 0);
        Assert.Null(rig.World.People[0].Deed);
    }

    [Theory]
    [InlineData("far cock", Hindrance.OutOfReach)]
    [InlineData("no cock", Hindrance.Impossible)]
    [InlineData("receiver", Hindrance.Impossible)]
    [InlineData("door", Hindrance.Impossible)] // described, not alive
    public void Operate_WhatCannotBe_IsHinderedAndDoesNothing(string item, Hindrance hindrance)
    {
        using Rig rig = new(s_plan, "calm");
        WorldAction action = new WorldAction.Operate(0, item, "open");
        rig.World.RunTo(SimTime.FromSeconds(1));
        Assert.Equal(hindrance, rig.World.HindranceOf(action));
        rig.World.Do(action, SimTime.FromSeconds(2));
        rig.World.RunTo(SimTime.FromSeconds(20));
        Assert.DoesNotContain(rig.World.Journal!, j => j.Kind == JournalKind.Deed);
    }

    [Fact]
    public void Walk_WhileTheHandsAreFull_IsHindered()
    {
        using Rig rig = new(s_plan, "calm");
        rig.World.Do(new WorldAction.Operate(0, "free cock", "open"), SimTime.FromSeconds(1));
        rig.World.RunTo(SimTime.FromSeconds(2));
        Assert.Equal(Hindrance.Busy, rig.World.HindranceOf(new WorldAction.Walk(0, "far end")));
        Assert.Equal(Hindrance.None, rig.World.HindranceOf(new WorldAction.Declare(0)));
        Assert.Equal(Hindrance.Nobody, rig.World.HindranceOf(new WorldAction.Walk(7, "far end")));
        rig.World.RunTo(SimTime.FromSeconds(6));
        Assert.Equal(Hindrance.None, rig.World.HindranceOf(new WorldAction.Walk(0, "far end")));
        Assert.Equal(Hindrance.NoWay, rig.World.HindranceOf(new WorldAction.Walk(1, "far end"))); // the guest's role does not go there
    }

    /// <summary>It works, and it is a breach all the same (mission: an unauthorised act that works is a failure).</summary>
    [Theory]
    [InlineData(1, Breach.MayNot)]
    [InlineData(0, Breach.NotPermitted)]
    public void Operate_WithoutBeingAllowed_MovesAndIsTold(int person, Breach breach)
    {
        using Rig rig = new(s_plan, "calm");
        Witness witness = new();
        rig.World.Follow(witness);
        rig.World.Do(new WorldAction.Operate(person, "own cock", "open"), SimTime.FromSeconds(1));
        Assert.True(rig.At(6, "flow of own cock") > 0);
        Assert.Equal([$"{breach} own cock", "touched own cock"], witness.Seen);
    }

    [Fact]
    public void Ask_ForPermission_IsGrantedAndUsed()
    {
        using Rig rig = new(s_plan, "calm");
        Witness witness = new();
        rig.World.Follow(witness);
        rig.World.Do(new WorldAction.Ask(0, "own cock"), SimTime.FromSeconds(1));
        rig.World.RunTo(SimTime.FromSeconds(16.9)); // 6 s to ask, 10 s to the answer
        Assert.Empty(rig.World.People[0].Permissions);
        rig.World.RunTo(SimTime.FromSeconds(17.1));
        Assert.Equal(["own cock"], rig.World.People[0].Permissions);
        rig.World.Do(new WorldAction.Operate(0, "own cock", "open"), SimTime.FromSeconds(18));
        rig.World.RunTo(SimTime.FromSeconds(30));
        Assert.Equal(["told desk", "touched own cock"], witness.Seen);
    }

    [Fact]
    public void Ask_NobodyAnswers_IsNotGranted()
    {
        using Rig rig = new(s_plan, "deaf");
        rig.World.Do(new WorldAction.Ask(0, "standing still"), SimTime.FromSeconds(1));
        rig.World.RunTo(SimTime.FromSeconds(200));
        Assert.False(rig.World.IsProtected(rig.World.People[0], s_plan.Book.Protections["standing still"]));
        Assert.Contains(rig.World.Journal!, j => j.Text.Contains("Nobody answers", StringComparison.Ordinal));
    }

    [Fact]
    public void Protections_AskedSetAndTakenAway_HoldMeanwhile()
    {
        using Rig rig = new(s_plan, "calm");
        Person hand = rig.World.People[0];
        (Protection asked, Protection tag, Protection sign) = (s_plan.Book.Protections["standing still"], s_plan.Book.Protections["tag"], s_plan.Book.Protections["sign"]);
        rig.World.Do(new WorldAction.Ask(0, asked.Name), SimTime.FromSeconds(1));
        rig.World.RunTo(SimTime.FromSeconds(18));
        Assert.True(rig.World.IsProtected(hand, asked));
        Assert.Equal(Hindrance.None, rig.World.HindranceOf(new WorldAction.GiveBack(0, asked.Name)));
        rig.World.Do(new WorldAction.GiveBack(0, asked.Name), SimTime.FromSeconds(19));
        rig.World.RunTo(SimTime.FromSeconds(26));
        Assert.False(rig.World.IsProtected(hand, asked));
        Assert.Equal(Hindrance.Impossible, rig.World.HindranceOf(new WorldAction.GiveBack(0, asked.Name)));

        rig.World.Do(new WorldAction.SetGuard(0, tag.Name, "free cock"), SimTime.FromSeconds(30));
        rig.World.RunTo(SimTime.FromSeconds(61));
        Assert.True(rig.World.IsProtected(hand, tag));
        rig.World.Do(new WorldAction.Operate(1, "free cock", "open"), SimTime.FromSeconds(62));
        Assert.Equal(0, rig.At(70, "flow of free cock")); // locked and tagged: it does not move

        rig.World.Do(new WorldAction.SetGuard(0, sign.Name, "ahead"), SimTime.FromSeconds(71));
        rig.World.RunTo(SimTime.FromSeconds(92));
        Assert.True(rig.World.IsProtected(rig.World.People[1], sign));
        Assert.Equal(Hindrance.Impossible, rig.World.HindranceOf(new WorldAction.SetGuard(0, sign.Name, "far end")));
    }

    /// <summary>A blue signal is removed only by the group that set it (49 CFR 218.23, as DESIGN has it).</summary>
    [Fact]
    public void TakeGuard_ThatOthersHaveSet_IsABreach()
    {
        using Rig rig = new(s_plan, "calm");
        Witness witness = new();
        rig.World.Follow(witness);
        rig.World.Do(new WorldAction.SetGuard(0, "sign", "ahead"), SimTime.FromSeconds(1));
        rig.World.Do(new WorldAction.TakeGuard(1, "sign", "ahead"), SimTime.FromSeconds(30));
        rig.World.RunTo(SimTime.FromSeconds(60));
        Assert.Equal([$"{Breach.RemovedByAnother} sign"], witness.Seen);
    }

    [Fact]
    public void Tell_AndReport_AreHeardByWhoFollows()
    {
        using Rig rig = new(s_plan, "calm");
        Witness witness = new();
        rig.World.Follow(witness);
        rig.World.Do(new WorldAction.Tell(0, "desk", "it leaks"), SimTime.FromSeconds(1));
        rig.World.Do(new WorldAction.Report(0, "it leaks"), SimTime.FromSeconds(10));
        rig.World.Do(new WorldAction.TakeHint(0), SimTime.FromSeconds(20));
        rig.World.Do(new WorldAction.Declare(0), SimTime.FromSeconds(30));
        rig.World.RunTo(SimTime.FromSeconds(40));
        Assert.Equal(["told desk", "reported it leaks", "hint", "declared"], witness.Seen);
    }

    /// <summary>Told whenever it comes true, at the moment at which it does: p falls as the tank blows through 2 mm; the sentinel and the reading agree.</summary>
    [Fact]
    public void Follow_WhatIsWatched_IsToldEachTime()
    {
        using Rig rig = new(s_plan, "calm");
        Witness witness = new() { Watched = s_plan.FindSignal("it has fallen") };
        rig.World.Follow(witness);
        rig.World.Do(new WorldAction.Operate(0, "free cock", "open"), SimTime.FromSeconds(1));
        rig.World.RunTo(SimTime.FromSeconds(600));
        string told = Assert.Single(witness.Seen, s => s.StartsWith("true", StringComparison.Ordinal));
        double at = double.Parse(told[5..], System.Globalization.CultureInfo.InvariantCulture);
        using Rig again = new(s_plan, "calm");
        again.World.Do(new WorldAction.Operate(0, "free cock", "open"), SimTime.FromSeconds(1));
        Assert.Equal(90 * 6894.757293, again.At(at, "pressure of receiver"), 5.0);
    }

    [Fact]
    public void Follow_AWorldThatHasBegun_IsRefused()
    {
        using Rig rig = new(s_plan, "calm");
        rig.World.RunTo(SimTime.FromSeconds(1));
        Assert.Throws<InvalidOperationException>(() => rig.World.Follow(new Witness()));
    }

    [Fact]
    public void Restore_InTheMidstOfADeed_SameEnd()
    {
        ulong whole = Ended(null);
        foreach (double at in new[] { 1.5, 4.9, 8, 12.2 })
        {
            Assert.Equal(whole, Ended(at));
        }
    }

    /// <summary>Every action reads back from a record as it was written.</summary>
    [Fact]
    public void Record_OfEveryAction_ReadsBack()
    {
        WorldAction[] actions =
        [
            new WorldAction.Ask(0, "x"), new WorldAction.GiveBack(0, "x"), new WorldAction.SetGuard(0, "x", "y"), new WorldAction.TakeGuard(0, "x", "y"),
            new WorldAction.Tell(0, "desk", "é"), new WorldAction.Report(0, "x"), new WorldAction.Declare(0), new WorldAction.TakeHint(0), new WorldAction.Walk(1, "far end"), new WorldAction.Operate(0, "x", "open"),
        ];
        string path = Path.Combine(Path.GetTempPath(), $"{Guid.NewGuid():n}.record");
        try
        {
            using (RecordFile file = RecordFile.Create(path, new(RecordHeader.CurrentFormat, "b", "h", new(null, null, 1, 0))))
            {
                foreach ((int i, WorldAction action) in actions.Index())
                {
                    file.Append(new(i, action));
                }
            }

            Assert.Equal(actions, SessionRecord.Read(File.ReadAllBytes(path), out _)!.Lines.Select(l => l.Do));
        }
        finally
        {
            File.Delete(path);
        }
    }

    private static ulong Ended(double? restoredAt)
    {
        using Rig rig = new(s_plan, "calm");
        Schedule(rig.World, 0);
        if (restoredAt is not { } at)
        {
            return Finish(rig.World);
        }

        rig.World.RunTo(SimTime.FromSeconds(at));
        WorldSnapshot snapshot = rig.World.Save();
        using Rig other = new(s_plan, "calm", 3);
        other.World.Restore(snapshot);
        return Finish(other.World);
    }

    private static void Schedule(World world, double from)
    {
        world.Do(new WorldAction.Operate(0, "free cock", "open"), SimTime.FromSeconds(from + 1));
        world.Do(new WorldAction.Ask(1, "standing still"), SimTime.FromSeconds(from + 2));
        world.Do(new WorldAction.Walk(0, "far end"), SimTime.FromSeconds(from + 7));
        world.Do(new WorldAction.Operate(0, "far cock", "open"), SimTime.FromSeconds(from + 25));
    }

    private static ulong Finish(World world)
    {
        world.RunTo(SimTime.FromSeconds(60));
        world.CutHere();
        return world.Hash;
    }

    private sealed class Witness : Overseer
    {
        public List<string> Seen { get; } = [];

        public Plant.Signals.Signal? Watched { get; init; }

        protected override void Begin()
        {
            if (Watched is not null)
            {
                Watch(0, Watched);
            }
        }

        protected override void CameTrue(int watch) => Seen.Add(FormattableString.Invariant($"true {World.Now.Seconds}"));

        protected override void TimeHasCome(int call) => Seen.Add($"time {call}");

        protected override void Touched(Person person, Item item) => Seen.Add($"touched {item.Name}");

        protected override void Breached(Person person, Breach breach, string what) => Seen.Add($"{breach} {what}");

        protected override void Told(Person person, string role, string text) => Seen.Add($"told {role}");

        protected override void Reported(Person person, string finding) => Seen.Add($"reported {finding}");

        protected override void Hinted(Person person) => Seen.Add("hint");

        protected override void Declared(Person person) => Seen.Add("declared");
    }
}
