using Sightglass.Network.Compile;
using Sightglass.Network.Springs;

namespace Sightglass.Network.Tests.Springs;

/// <summary>Bodies on springs against statics, and what is told of those that do not stand.</summary>
public sealed class SuspensionTests
{
    /// <summary>R_i = k_i·(z₀ + φ·x_i), ΣR = W, ΣR·x = W·e. Source: statics; expected values worked out independently.</summary>
    [Fact]
    public void A4_14_ThreeEqualSprings_UnderALoadOffTheMiddle_CarryTheClosedForm() =>
        Check(360e3, 0.10, [-2.0, 0, 2.2], [1, 1, 1], [117_190.33, 119_909.37, 122_900.30]);

    [Fact]
    public void A4_14_FourUnequalSprings_UnderALoadOffTheMiddle_CarryTheClosedForm() =>
        Check(400e3, 0.2, [-3, -1, 1.5, 3.2], [1, 1.2, 1.2, 1], [89_902.744, 108_642.37, 109_591.21, 91_863.683]);

    /// <summary>A bar that hangs at its middle and stands on two springs shares its load equally whatever they are. Source: statics.</summary>
    [Theory]
    [InlineData(1, 1)]
    [InlineData(1, 0.2)]
    [InlineData(0.05, 3)]
    public void A4_14_EqualisedPair_OnUnequalSprings_CarriesEqually(double first, double second)
    {
        SuspensionBuilder b = new();
        Body bar = b.AddBody("equaliser", 1, 0, Freedoms.Heave | Freedoms.Pitch);
        b.AddWeight(bar, 1, 0, b.AddInput("weight", 200e3));
        Spring[] springs = [b.AddSpring("first", bar, null, 0, 0, 1e6 * first), b.AddSpring("second", bar, null, 2, 0, 1e6 * second)];
        SuspensionState s = Solved(b);
        Assert.All(springs, spring => Assert.Equal(100e3, s.Force(spring), 1e-4));
    }

    /// <summary>A pull at a height between two pivots: ±F·h/L.</summary>
    [Fact]
    public void A4_14_PullAtAHeight_OnTwoPivots_ShiftsLoadToTheRear()
    {
        SuspensionBuilder b = new();
        Body body = b.AddBody("body", 0, 0, Freedoms.Heave | Freedoms.Pitch);
        b.AddWeight(body, 0, 0, b.AddInput("weight", 1.18e6));
        b.AddPitch(body, b.AddInput("pull at the drawbar", 180e3 * 0.85));
        Spring front = b.AddSpring("front pivot", body, null, -4.5, 0, 1e8), rear = b.AddSpring("rear pivot", body, null, 4.5, 0, 1e8);
        SuspensionState s = Solved(b);
        Assert.Equal(573_000, s.Force(front), 573_000 * 1e-9);
        Assert.Equal(607_000, s.Force(rear), 607_000 * 1e-9);
    }

    /// <summary>A table on four legs whose load stands over three: the fourth lifts and the three carry what statics gives them; a leg that can pull would.</summary>
    [Fact]
    public void Leg_ThatCannotPull_LiftsAndTheOthersCarry()
    {
        (SuspensionState s, Spring[] legs) = Table(pulls: false);
        Assert.Equal([0, 200, 600, 200], legs.Select(l => s.Force(l)), (a, b) => Math.Abs(a - b) < 1e-7);
        Assert.Equal([new(StandFindingKind.Lifted, "leg 0")], s.Suspension.FindingsOf(s));
        Assert.Equal(StandOutcome.Stands, s.Outcome);
        (s, legs) = Table(pulls: true);
        Assert.Equal(-50, s.Force(legs[0]), 1e-7);

        // Load 1,000 N at (0.6, 0.6)·½ of a square with legs at (±1, ±1)/…: by symmetry R = W/4·(1 ± 0.6 ± 0.6).
        static (SuspensionState State, Spring[] Legs) Table(bool pulls)
        {
            SuspensionBuilder b = new();
            Body table = b.AddBody("table", 0, 0);
            b.AddWeight(table, 0.6, 0.6, b.AddInput("weight", 1000));
            Spring[] legs = [.. new[] { (-1, -1), (-1, 1), (1, 1), (1, -1) }.Select((p, i) => b.AddSpring($"leg {i}", table, null, p.Item1, p.Item2, 1e5, pulls))];
            return (Solved(b), legs);
        }
    }

    /// <summary>A short leg carries nothing until the others have gone down by what it is short.</summary>
    [Theory]
    [InlineData(0.0, 250, 250)]
    [InlineData(0.001, 225, 275)]
    [InlineData(0.02, 0, 500)]
    public void Pair_WithAGap_CarriesByWhatItIsShort(double gap, double shortOnes, double longOnes)
    {
        SuspensionBuilder b = new();
        Body table = b.AddBody("table", 0, 0);
        b.AddWeight(table, 0, 0, b.AddInput("weight", 1000));
        Input missing = b.AddInput("gap", gap);
        Spring[] diagonal = [b.AddSpring("a", table, null, -1, -1, 5e4, gap: missing), b.AddSpring("b", table, null, 1, 1, 5e4, gap: missing)];
        Spring[] other = [b.AddSpring("c", table, null, -1, 1, 5e4), b.AddSpring("d", table, null, 1, -1, 5e4)];
        SuspensionState s = Solved(b);
        Assert.All(diagonal, d => Assert.Equal(shortOnes, s.Force(d), 1e-6));
        Assert.All(other, d => Assert.Equal(longOnes, s.Force(d), 1e-6));
    }

    [Fact]
    public void Body_OnOneSpring_FallsAndSaysSo()
    {
        SuspensionBuilder b = new();
        Body body = b.AddBody("body", 0, 0);
        b.AddWeight(body, 0, 0, b.AddInput("weight", 1000));
        b.AddSpring("only", body, null, 0, 0, 1e6);
        SuspensionState s = Solved(b);
        Assert.Equal(StandOutcome.Falls, s.Outcome);
        Assert.Contains(new(StandFindingKind.Falls, "body"), s.Suspension.FindingsOf(s));
        Assert.All(s.Forces.ToArray(), f => Assert.True(double.IsFinite(f)));
    }

    /// <summary>A weight outside of all legs tips over what cannot be held down.</summary>
    [Fact]
    public void Body_WithItsWeightOutside_Falls()
    {
        SuspensionBuilder b = new();
        Body body = b.AddBody("body", 0, 0, Freedoms.Heave | Freedoms.Pitch);
        b.AddWeight(body, 3, 0, b.AddInput("weight", 1000));
        b.AddSpring("left", body, null, -1, 0, 1e6);
        b.AddSpring("right", body, null, 1, 0, 1e6);
        Assert.Equal(StandOutcome.Falls, Solved(b).Outcome);
    }

    [Fact]
    public void Input_ThatIsNoNumber_CountsAsNothingAndSaysSo()
    {
        SuspensionBuilder b = new();
        Body body = b.AddBody("body", 0, 0, Freedoms.Heave);
        b.AddWeight(body, 0, 0, b.AddInput("weight", double.NaN));
        Spring spring = b.AddSpring("spring", body, null, 0, 0, 1e6);
        SuspensionState s = Solved(b);
        Assert.Equal(0, s.Force(spring));
        Assert.Equal([new(StandFindingKind.NotFinite, "weight")], s.Suspension.FindingsOf(s));
    }

    [Fact]
    public void Solve_AfterTheFirst_AllocatesNothing()
    {
        Stack stack = new(Stack.Ordinary);
        SuspensionState s = stack.Suspension.NewState();
        double[] inputs = stack.Suspension.NewInputs();
        stack.Suspension.Solve(inputs, s);
        long before = GC.GetAllocatedBytesForCurrentThread();
        stack.Suspension.Solve(inputs, s);
        Assert.Equal(before, GC.GetAllocatedBytesForCurrentThread());
    }

    internal static SuspensionState Solved(SuspensionBuilder b)
    {
        Suspension suspension = b.Build();
        SuspensionState state = suspension.NewState();
        suspension.Solve(suspension.NewInputs(), state);
        return state;
    }

    private static void Check(double weight, double at, double[] x, double[] stiffness, double[] expected)
    {
        SuspensionBuilder b = new();
        Body body = b.AddBody("body", 0, 0, Freedoms.Heave | Freedoms.Pitch);
        b.AddWeight(body, at, 0, b.AddInput("weight", weight));
        Spring[] springs = [.. x.Select((p, i) => b.AddSpring($"{i}", body, null, p, 0, 1.3e6 * stiffness[i]))];
        SuspensionState s = Solved(b);
        Assert.Equal(expected, springs.Select(p => s.Force(p)), (e, a) => Math.Abs(e - a) <= 1e-6 * e);
    }
}
