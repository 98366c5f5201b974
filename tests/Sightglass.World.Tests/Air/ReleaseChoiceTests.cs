using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Time;
using Sightglass.Book;
using Sightglass.Book.Model;
using Sightglass.Plant.Kinds;
using Sightglass.Plant.Plans;
using Sightglass.World.Tests.Trade;

namespace Sightglass.World.Tests.Air;

/// <summary>
/// Direct or graduated release, chosen on the vehicle while it runs. By hand, with ratio 2.5 and an insensitivity of 3 psi: the cylinder holds 2.5·(reduction − 3 psi), so 30 psi at a reduction of 15 psi,
/// 27.5 psi at 14 psi, 17.5 psi at 10 psi (common practice, no source). The tolerance of 2 psi is what
/// the reference volume loses through its hole while the pipe falls: 0.8 psi, 2.5 times; held to be released directly the cylinder is not filled up again.
/// </summary>
public sealed class ReleaseChoiceTests
{
    private const double Psi = 6894.757293;

    private static readonly Lazy<Plan> s_plan = new(() => Rig.Compile(Vehicle(", direct release by: release cap")));

    private static string Vehicle(string choice, string release = "graduated") => $$"""
        book: Choice
        length: 20 m
        roles: { hand: { walks: 1.3 m/s } }
        places: { cab: { x: 5 m, y: 2.4 m } }
        items:
          main reservoir: { kind: reservoir, volume: 1 m^3, start pressure: 140 psi }
          handle: { kind: handle, positions: [release, r5, r10, r14, r15, emergency], who: [hand], places: [cab] }
          release cap: { kind: handle, positions: [graduated, direct], who: [hand], places: [cab] }
          equalising reservoir: { kind: reservoir, volume: 4 L, start pressure: 70 psi }
          handle valve: { kind: regulating valve, from: main reservoir, to: equalising reservoir, diameter: 2 mm, exhaust diameter: 1.6 mm, width: 1 psi, set by: handle, pressures: { release: 70 psi, r5: 65 psi, r10: 60 psi, r14: 56 psi, r15: 55 psi, emergency: 0 psi } }
          relay: { kind: relay valve, from: main reservoir, to: brake pipe, follows: equalising reservoir, diameter: 5 mm, exhaust diameter: 8 mm, width: 1 psi }
          brake pipe: { kind: air line, length: 25 m, diameter: 32 mm, start pressure: 70 psi }
          auxiliary reservoir: { kind: reservoir, volume: 26 L, start pressure: 70 psi }
          cylinder: { kind: brake cylinder, diameter: 200 mm, travel: 150 mm }
          control valve: { kind: control valve, from: auxiliary reservoir, to: cylinder, senses: brake pipe, diameter: 4 mm, exhaust diameter: 3 mm, width: 0.5 psi, release: {{release}}, ratio: 2.5, insensitivity: 3 psi, greatest: 50 psi{{choice}} }
        situations:
          charged: { text: "Charged, released." }

        """;

    private static double Cylinder(Rig rig, double at) => rig.At(at, "pressure of cylinder") / Psi;

    [Fact]
    public void Release_Graduated_FallsStepByStep()
    {
        using Rig rig = new(s_plan.Value, "charged");
        rig.Do(10, "handle", "r15");
        Assert.Equal(30, Cylinder(rig, 120), 2.0);
        rig.Do(120, "handle", "r10");
        Assert.Equal(17.5, Cylinder(rig, 240), 2.0);
        rig.Do(240, "handle", "r5");
        Assert.Equal(5, Cylinder(rig, 360), 2.0);
    }

    /// <summary>The first rise that is more than the release difference of 1.5 psi lets it off to the end; one of 1 psi does nothing at all.</summary>
    [Fact]
    public void Release_Direct_GoesToTheEnd()
    {
        using Rig rig = new(s_plan.Value, "charged");
        rig.Do(1, "release cap", "direct");
        rig.Do(10, "handle", "r15");
        double applied = Cylinder(rig, 120);
        Assert.Equal(30, applied, 2.5);
        rig.Do(120, "handle", "r14");
        Assert.Equal(applied, Cylinder(rig, 240), 0.05);
        rig.Do(240, "handle", "r10");
        Assert.Equal(0, Cylinder(rig, 360), 0.2);
        Assert.Equal(60, rig.At(360, "reference pressure of control valve") / Psi, 1.0);
    }

    /// <summary>What it then compares with is the pipe as it stands: a further reduction of 10 psi from there applies 2.5·(10 − 3) psi.</summary>
    [Fact]
    public void Apply_AfterADirectRelease_CountsFromWhereThePipeStands()
    {
        using Rig rig = new(s_plan.Value, "charged");
        rig.Do(1, "release cap", "direct");
        rig.Do(10, "handle", "r10");
        rig.Do(120, "handle", "r5");
        Assert.Equal(0, Cylinder(rig, 240), 0.2);
        rig.Do(240, "handle", "r15");
        Assert.Equal(17.5, Cylinder(rig, 360), 2.0);
    }

    /// <summary>Chosen while the brake is set, each takes effect at the next rise of the pipe, and nothing moves at the choice itself.</summary>
    [Fact]
    public void Choose_WhileSet_CountsFromTheNextRise()
    {
        using Rig rig = new(s_plan.Value, "charged");
        rig.Do(10, "handle", "r15");
        rig.Do(120, "release cap", "direct");
        Assert.Equal(30, Cylinder(rig, 200), 2.0);
        rig.Do(200, "handle", "r14");
        rig.Do(300, "release cap", "graduated");
        Assert.Equal(27.5, Cylinder(rig, 400), 2.0);
        rig.Do(400, "release cap", "direct");
        rig.Do(401, "handle", "r10");
        Assert.Equal(0, Cylinder(rig, 500), 0.2);
    }

    /// <summary>Graduated release chosen while a direct one runs holds what is left then: the hole of the reference volume shuts, and the cylinder keeps 2.5·(reference − pipe − 3 psi).</summary>
    [Fact]
    public void Choose_GraduatedWhileItReleases_HoldsWhatIsLeft()
    {
        using Rig rig = new(s_plan.Value, "charged");
        rig.Do(1, "release cap", "direct");
        rig.Do(10, "handle", "r15");
        rig.Do(120, "handle", "r14");
        rig.Do(200, "handle", "r10");
        double at = 200;
        while (Cylinder(rig, at += 0.25) > 15)
        {
            Assert.True(at < 260);
        }

        rig.Do(at, "release cap", "graduated");
        double left = rig.At(at + 60, "reference pressure of control valve") - rig.At(at + 60, "pressure of brake pipe");
        Assert.InRange(Cylinder(rig, at + 60), 2, 15);
        Assert.Equal(2.5 * ((left / Psi) - 3), Cylinder(rig, at + 60), 0.7);
    }

    /// <summary>The reference volume gives its air to the brake pipe and to nobody else: what is in all stores and boundaries stays, whatever is done (kernel's contract: 1e-12).</summary>
    [Fact]
    public void Mass_HandleAndCapAtRandom_Closes()
    {
        using Rig rig = new(s_plan.Value, "charged");
        Random chance = new(17);
        foreach (int i in Enumerable.Range(1, 400))
        {
            Item item = rig.Plan.Book.Items[chance.Next(3) == 0 ? "release cap" : "handle"];
            rig.Do((9 * i) + chance.NextDouble(), item.Name, item.Positions[chance.Next(item.Positions.Length)]);
        }

        double before = Masses.Of(rig.World, 0).Sum;
        rig.World.RunTo(SimTime.FromSeconds(3700));
        Assert.True(rig.World.Trouble is null, rig.World.Trouble);
        rig.World.CutHere();
        (double after, double size) = Masses.Of(rig.World, 0);
        Assert.Equal(before, after, 1e-12 * size);
    }

    /// <summary>A vehicle whose cap is never touched does what one does that has none: the same bits.</summary>
    [Fact]
    public void Choice_NeverTouched_SameBitsAsFixed()
    {
        using Rig chosen = new(s_plan.Value, "charged");
        using Rig set = new(Rig.Compile(Vehicle("")), "charged");
        string[] positions = ["r15", "r5", "emergency", "release"];
        for (int i = 0; i < positions.Length; i++)
        {
            double at = 50 * (i + 1);
            chosen.Do(at, "handle", positions[i]);
            set.Do(at, "handle", positions[i]);
            foreach (string quantity in (string[])["pressure of cylinder", "pressure of brake pipe", "reference pressure of control valve"])
            {
                Assert.Equal(set.At(at + 20, quantity), chosen.At(at + 20, quantity));
            }
        }
    }

    /// <summary>Under way nothing is allocated, whichever release is chosen (counted by the runtime).</summary>
    [Fact]
    public void Run_ChosenAndReleasing_NoBytes()
    {
        long least = long.MaxValue;
        using Rig rig = new(s_plan.Value, "charged");
        rig.World.Journal = null;
        rig.Do(1, "release cap", "direct");
        double at = 0;
        for (int i = 0; i < 20 && least > 0; i++)
        {
            rig.Do(at += 60, "handle", "r15");
            rig.Do(at += 60, "handle", "r10");
            rig.World.RunTo(SimTime.FromSeconds(at - 1));
            long before = GC.GetAllocatedBytesForCurrentThread();
            rig.World.RunTo(SimTime.FromSeconds(at + 50));
            least = Math.Min(least, GC.GetAllocatedBytesForCurrentThread() - before);
        }

        Assert.Equal(0, least);
        Assert.Equal(0, rig.At(at + 55, "pressure of cylinder") / Psi, 0.2);
    }

    [Theory]
    [InlineData(", direct release by: brake pipe", "graduated", "P032")]
    [InlineData(", direct release by: release cap", "direct", "P033")]
    public void Compile_NothingToChoose_SaysWhatWouldBeRight(string choice, string release, string code)
    {
        DiagnosticList found = new();
        ClassBook? book = BookReader.Read([new SourceText("book.yaml", Vehicle(choice, release))], [], KindLibrary.Catalog, found);
        Assert.NotNull(book);
        PlanCompiler.Compile(book, found);
        Assert.Equal(code, Assert.Single(found, d => d.Severity == Severity.Error).Code);
    }
}
