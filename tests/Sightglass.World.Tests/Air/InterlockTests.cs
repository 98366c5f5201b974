using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Time;
using Sightglass.Book;
using Sightglass.Book.Model;
using Sightglass.Plant.Kinds;
using Sightglass.Plant.Plans;
using Sightglass.Tests.Support;
using Sightglass.World.Tests.Trade;

namespace Sightglass.World.Tests.Air;

/// <summary>One brake handle for the stands of two cabs: a stand does not move without it, and it comes off in one place only (common practice, no source).</summary>
public sealed class InterlockTests
{
    private const double Psi = 6894.757293;

    private static readonly Lazy<Plan> s_plan = new(() => Books.Load("two-cabs"));

    [Fact]
    public void Handle_OnTheFrontStand_TheRearOneDoesNotMove()
    {
        using Rig rig = Standing();
        rig.Do(1, "rear brake handle", "emergency");
        Assert.Equal(0, rig.At(2, "flow of rear emergency vent"), 1e-12);
        Assert.True(rig.At(2, "handle-off of rear brake handle") >= 0);
        rig.Do(3, "front cut-in cock", "cut out");
        rig.Do(4, "front brake handle", "handle-off");
        rig.Do(5, "rear brake handle", "full service");
        Assert.True(rig.At(6, "full service of rear brake handle") >= 0);
        rig.Do(7, "front brake handle", "release");
        Assert.True(rig.At(8, "handle-off of front brake handle") >= 0);
        Assert.Contains(rig.World.Journal!, j => j.Text.Contains("front brake handle to release, but it does not move", StringComparison.Ordinal));
    }

    /// <summary>Cut out at both ends, nothing feeds or empties the small reservoir: the brake stays set while the engineer walks, and the rear end takes it over as it is.</summary>
    [Fact]
    public void Ends_Changed_TheBrakeStaysSetAndObeysTheRear()
    {
        using Rig rig = Standing();
        rig.Do(1, "front cut-in cock", "cut out");
        rig.Do(3, "front brake handle", "handle-off");
        Assert.Equal(57, rig.At(60, "pressure of brake cylinder") / Psi, 3.0);
        Assert.Equal(84, rig.At(60, "pressure of brake pipe") / Psi, 1.5);
        rig.Do(60, "rear brake handle", "full service");
        rig.Do(62, "rear cut-in cock", "cut in");
        Assert.Equal(84, rig.At(90, "pressure of brake pipe") / Psi, 1.5);
        rig.Do(90, "rear brake handle", "release");
        Assert.Equal(110, rig.At(150, "pressure of brake pipe") / Psi, 1.5);
        Assert.True(rig.At(150, "pressure of brake cylinder") / Psi < 3);
        Assert.True(rig.At(150, "rear end leads") >= 0);
    }

    /// <summary>The handle off before the stand is cut out: the stand asks for nothing, and the pipe goes to nothing.</summary>
    [Fact]
    public void Handle_OffWhileCutIn_EmptiesThePipe()
    {
        using Rig rig = Standing();
        rig.Do(1, "front brake handle", "handle-off");
        Assert.True(rig.At(120, "pressure of brake pipe") / Psi < 3);
    }

    /// <summary>
    /// Two stands cut in work against each other: what the one feeds through 2 mm at 151 psi the other lets out through 2.5 mm, both choked, at 151·4/6.25 = 96 psi: the pipe stands at 82 psi over the
    /// atmosphere where the one asks for 110 psi and the other for nothing (choked flow, derived).
    /// </summary>
    [Fact]
    public void Stands_BothCutIn_WorkAgainstEachOther()
    {
        using Rig rig = Standing();
        rig.Do(1, "rear cut-in cock", "cut in");
        rig.Do(2, "front brake handle", "release");
        Assert.Equal(82, rig.At(120, "pressure of brake pipe") / Psi, 4.0);
    }

    /// <summary>It can be asked at any moment, so it may not depend on what is worked out by steps.</summary>
    [Theory]
    [InlineData("pressure of reservoir > 50 psi")]
    [InlineData("picked up of low air")]
    [InlineData("speed < 1 mph")]
    public void Compile_MovesByWhatNoControlSays_SaysWhatWouldBeRight(string condition)
    {
        string book = $$"""
            book: Held
            length: 20 m
            roles: { hand: { walks: 1.3 m/s } }
            places: { cab: { x: 5 m, y: 2.4 m } }
            items:
              reservoir: { kind: reservoir, volume: 100 L, start pressure: 100 psi }
              low air: { kind: relay, picks up when: pressure of reservoir < 60 psi, drops when: pressure of reservoir > 70 psi }
              handle: { kind: handle, positions: [shut, open], moves only while: {{condition}}, who: [hand], places: [cab] }
            """;
        DiagnosticList found = new();
        ClassBook? read = BookReader.Read([new SourceText("book.yaml", book)], [], KindLibrary.Catalog, found);
        Assert.NotNull(read);
        Assert.Null(PlanCompiler.Compile(read, found));
        Diagnostic one = Assert.Single(found, d => d.Severity == Severity.Error);
        Assert.Equal(("P034", 8), (one.Code, one.Span.Line));
    }

    /// <summary>The front end leads, nothing is wrong, the hand brake is not applied.</summary>
    private static Rig Standing()
    {
        Situation drawn = s_plan.Value.Book.Situations["at the end of the line"];
        Situation still = drawn with { Start = [.. drawn.Start.Where(s => s.Name is not ("rear cut-in cock" or "grade"))], Faults = [] };
        return new(s_plan.Value, still);
    }
}
