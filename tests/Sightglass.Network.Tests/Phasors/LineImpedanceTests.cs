using Sightglass.Network.Phasors;

namespace Sightglass.Network.Tests.Phasors;

/// <summary>Matrices of lines against what currents meet in them.</summary>
public sealed class LineImpedanceTests
{
    private static readonly Phasor s_positive = new(0.3, 0.6);
    private static readonly Phasor s_zero = new(0.7, 2.1);

    /// <summary>Balanced currents meet z₁, three equal ones z₀. Source: symmetrical components.</summary>
    [Fact]
    public void OfSequences_UnderBalancedAndEqualCurrents_MeetsEach()
    {
        Phasor[] z = LineImpedance.OfSequences(s_positive, s_zero);
        for (int row = 0; row < 3; row++)
        {
            (Phasor balanced, Phasor equal) = (default, default);
            for (int w = 0; w < 3; w++)
            {
                balanced += z[(3 * row) + w] * Phasor.OfPhase(w);
                equal += z[(3 * row) + w];
            }

            Assert.Equal(0, (balanced - (s_positive * Phasor.OfPhase(row))).Magnitude, 1e-15);
            Assert.Equal(0, (equal - s_zero).Magnitude, 1e-15);
        }
    }

    /// <summary>A line of four wires with its neutral grounded at both ends is a line of three with the reduced matrix: both give the same voltages. Source: each other.</summary>
    [Fact]
    public void WithoutGrounded_OfFourWires_GivesTheVoltagesOfAll()
    {
        Phasor own = new(0.05, 0.12), mutual = new(0.01, 0.05);
        Phasor[] four = [.. Enumerable.Range(0, 16).Select(i => i % 5 == 0 ? own : mutual)];
        FlowRig whole = new(), reduced = new();
        Terminal[] source = [.. whole.Source("supply", 277), whole.Builder.AddTerminal("n")], far = whole.Place("far", 4);
        whole.Builder.Ground(source[3]);
        whole.Builder.Ground(far[3]);
        whole.Join("line", source, far, four);
        Terminal[] end = reduced.Place("far");
        reduced.Join("line", reduced.Source("supply", 277), end, LineImpedance.WithoutGrounded(four, 3));
        foreach ((FlowRig rig, Terminal[] at) in new[] { (whole, far), (reduced, end) })
        {
            rig.Builder.AddLoad("one", at[0], null, LoadKind.Power, 277, rig.Input("W", 20_000), rig.Input("var", 9000));
            rig.Builder.AddLoad("other", at[2], null, LoadKind.Impedance, 277, rig.Input("W2", 5000));
        }

        FlowState a = whole.Solve(), b = reduced.Solve();
        Assert.All(Enumerable.Range(0, 3), w => Assert.Equal(0, (a.Voltage(far[w]) - b.Voltage(end[w])).Magnitude, 1e-10));
        Assert.NotEqual(four[0], LineImpedance.WithoutGrounded(four, 3)[0]);
    }

    [Fact]
    public void OfLength_TwiceAsLong_IsTwiceAsMuch() => Assert.Equal([new Phasor(20, 40)], LineImpedance.OfLength([new Phasor(0.1, 0.2)], 200));
}
