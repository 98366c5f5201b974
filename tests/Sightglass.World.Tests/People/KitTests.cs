using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Time;
using Sightglass.Book;
using Sightglass.Book.Model;
using Sightglass.Plant.Kinds;
using Sightglass.Plant.Plans;
using Sightglass.World.People;
using Sightglass.World.Runs;
using Sightglass.World.Tests.Trade;

namespace Sightglass.World.Tests.People;

/// <summary>What is kept to be used and may be missing. Expected: derived.</summary>
public sealed class KitTests
{
    private const string Body = """
        book: Kits
        length: 20 m
        width: 3 m
        roles: { hand: { walks: 1.3 m/s, reacts in: 1 s } }
        places: { yard: { x: 4 m, y: 2.4 m } }
        systems: { air: { medium: brake, alive: yes } }
        items:
          receiver: { kind: reservoir, system: air, volume: 1 m^3, start pressure: 100 psi }
          wheel: { places: [yard] }
          box: { kind: kit, keeps: "Wedge, hammer", places: [yard] }
          locker: { kind: kit, keeps: hammer, places: [yard] }
          flag: { kind: kit, places: [yard] }
          pane: { kind: window, places: [yard] }
        facts: { it stands: { is: pressure of receiver > 1 psi }, it is clear: { is: clear of pane }, it has a hole: { is: hole of pane } }
        protections: { wedges: { chocks: [wheel], needs: [box] } }
        situations: { calm: { people: [ { role: hand, at: [yard] } ] } }

        """;

    private static readonly Plan s_plan = Rig.Compile(Body, Card("Wedge it", "radio, wedge"), Card("Hit it", "hammer"), Card("Wave", "flag"), Card("Talk", "radio"), Card("Chock it", "radio", "Chock the wheel."));

    /// <summary>What a card needs cannot be had where all that keep it are without it; a radio is kept nowhere, so that people bring it.</summary>
    [Theory]
    [InlineData("Wedge it", "box", "wedge is needed and is missing from the box")]
    [InlineData("Wedge it", "locker", null)]
    [InlineData("Hit it", "box", null)]
    [InlineData("Hit it", "box, locker", "hammer is needed and is missing from the box")]
    [InlineData("Wave", "flag", "flag is needed and is missing from the flag")]
    [InlineData("Talk", "box, locker, flag", null)]
    public void Card_WhatItNeedsIsMissing_IsNotBegun(string title, string missing, string? why)
    {
        Outcome outcome = RunOf(title, missing, 0);
        Assert.Equal(why is null ? OutcomeKind.Done : OutcomeKind.Stopped, outcome.Kind);
        Assert.Equal(why ?? "", outcome.Mechanism);
    }

    /// <summary>They have taken it along by then.</summary>
    [Fact]
    public void Card_ItGoesMissingLater_IsWorked() => Assert.Equal(OutcomeKind.Done, RunOf("Wedge it", "box", 1).Kind);

    [Fact]
    public void Protect_WhatItNeedsIsMissing_CannotBeSet()
    {
        Outcome outcome = RunOf("Chock it", "box", 0);
        Assert.Equal((OutcomeKind.Failed, "wedges is needed and is missing from the box"), (outcome.Kind, outcome.Mechanism));
        using Rig rig = new(s_plan, "calm");
        WorldAction.SetGuard set = new(0, "wedges", "wheel");
        Assert.Equal(Hindrance.None, rig.World.HindranceOf(set));
        rig.Break(0, "box", "missing");
        rig.World.RunTo(SimTime.FromSeconds(1));
        Assert.Equal(Hindrance.Lacks, rig.World.HindranceOf(set));
        rig.World.Do(set, SimTime.FromSeconds(2));
        rig.World.RunTo(SimTime.FromSeconds(60));
        Assert.Empty(rig.World.Guards);
    }

    [Fact]
    public void Window_EachFault_IsTold()
    {
        using Rig rig = new(s_plan, "calm");
        Assert.True(rig.At(1, "it is clear") >= 0 && rig.At(1.5, "it has a hole") < 0);
        rig.Break(2, "pane", "cannot be seen through");
        Assert.True(rig.At(3, "it is clear") < 0 && rig.At(3.5, "it has a hole") < 0);
        rig.Break(4, "pane", "broken");
        Assert.True(rig.At(5, "it has a hole") >= 0);
    }

    [Theory]
    [InlineData("needs: [box]", "needs: [wheel]", "P060")]
    [InlineData("protections:", "legs: [ { from: yard, to: attic, takes: 3 s, through: [wheel] } ]\nprotections:", "P059")]
    public void Compile_NothingToMiss_SaysWhatWouldBeRight(string with, string instead, string code)
    {
        DiagnosticList found = [];
        string text = Body.Replace(with, instead, StringComparison.Ordinal).Replace("y: 2.4 m } }", "y: 2.4 m }, attic: { x: 4 m, y: 0 m, z: 2 m } }", StringComparison.Ordinal);
        ClassBook? book = BookReader.Read([new SourceText("book.yaml", text)], [], KindLibrary.Catalog, found);
        Assert.Null(PlanCompiler.Compile(book!, found));
        Assert.Equal(code, Assert.Single(found, d => d.Severity == Severity.Error).Code);
    }

    private static string Card(string title, string needs, string step = "Wait 5 s.") => $"""
        Card: {title}
        For: hand
        Needs: {needs}
        Done when: it stands.
        1. {step}

        """;

    private static Outcome RunOf(string title, string missing, double at)
    {
        using Rig rig = new(s_plan, "calm");
        foreach (string kit in missing.Split(", "))
        {
            rig.Break(at, kit, "missing");
        }

        CardRun run = Rig.RunOf(s_plan, title);
        rig.World.Begin(run);
        rig.World.RunTo(SimTime.FromSeconds(60));
        return run.Outcome;
    }
}
