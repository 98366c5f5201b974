using Sightglass.Network.Circuits;
using Sightglass.Network.Compile;

namespace Sightglass.Network.Tests.Circuits;

/// <summary>Circuits against closed forms. Source: network theory (any text); expected values worked out independently when the list was made.</summary>
public sealed class DirectCurrentTests
{
    private const double Stiff = 1e-9;

    /// <summary>A ladder of unit resistances, open at its end: R_in = F(2n+1)/F(2n), Fibonacci numbers.</summary>
    [Theory]
    [InlineData(1, 2.0)]
    [InlineData(2, 5.0 / 3)]
    [InlineData(3, 13.0 / 8)]
    [InlineData(5, 89.0 / 55)]
    public void A3_10_UnitLadder_OfSections_HasTheResistanceOfFibonacci(int sections, double ohms)
    {
        (double into, _) = Ladder(sections, 1, 1, 1);
        Assert.Equal(ohms, 1 / into, 1e-8);
    }

    /// <summary>γ = 2·asinh(½√(r/R)); V_end/V_in = cosh(γ/2)/cosh((2n+1)γ/2).</summary>
    [Fact]
    public void A3_10_Ladder_OfTenSections_HasTheClosedFormsCurrentAndEnd()
    {
        (double into, double end) = Ladder(10, 0.05, 40, 74);
        Assert.Equal(4.1911448, 74 / into, 1e-6);
        Assert.Equal(17.656274, into, 1e-5);
        Assert.Equal(69.189477, end, 1e-5);
        double gamma = 2 * Math.Asinh(0.5 * Math.Sqrt(0.05 / 40));
        Assert.Equal(Math.Cosh(gamma / 2) / Math.Cosh(21 * gamma / 2), end / 74, 1e-9);
    }

    [Fact]
    public void A3_10_LoadedDivider_OfATrainsVoltage_HasTheTextbooksVoltage()
    {
        CircuitBuilder b = new();
        Node ground = Ground(b);
        Node tap = b.AddNode("tap");
        Node top = Supply(b, ground, 74, Stiff);
        b.AddResistance("upper", top, tap, 100e3);
        b.AddResistance("lower", tap, ground, 47e3);
        b.AddResistance("load", tap, ground, 100e3);
        Assert.Equal(17.927835, Solved(b.Build()).Voltage(tap), 1e-6);
    }

    [Fact]
    public void A3_10_Source_BehindItsResistance_SagsAndGivesMostIntoItsOwn()
    {
        (double amperes, double volts) = Into(0.050);
        Assert.Equal(800, amperes, 1e-6);
        Assert.Equal(40, volts, 1e-9);
        (amperes, volts) = Into(0.030);
        Assert.Equal(34_133.333, amperes * volts, 1e-2);
        Assert.True(Into(0.0299).Power < amperes * volts && Into(0.0301).Power < amperes * volts);
    }

    /// <summary>Several sources on one pair of nodes: V = ΣE/r / Σ1/r. Source: Millman 1940, from memory.</summary>
    [Fact]
    public void Sources_SideBySide_GiveMillmansVoltage()
    {
        CircuitBuilder b = new();
        Node ground = Ground(b);
        Node top = b.AddNode("top");
        double[] volts = [64, 74, 12, -5];
        double[] ohms = [0.03, 0.08, 2.5, 40];
        for (int i = 0; i < volts.Length; i++)
        {
            b.AddSource($"source {i}", ground, top, ohms[i], b.AddInput($"volts {i}", volts[i]));
        }

        b.AddResistance("load", top, ground, 1.7);
        double expected = volts.Zip(ohms, (e, r) => e / r).Sum() / (ohms.Sum(r => 1 / r) + (1 / 1.7));
        Assert.Equal(expected, Solved(b.Build()).Voltage(top), 1e-12 * expected);
    }

    /// <summary>1 GΩ beside 1 mΩ: V of a divider of 10⁻³ and 10⁹ Ω behind 10⁶ Ω, all in series on 64 V, by Ohm's law.</summary>
    [Fact]
    public void Series_OfTwelveDecades_LosesNoDigit()
    {
        CircuitBuilder b = new();
        Node ground = Ground(b);
        Node top = Supply(b, ground, 64, 1e6);
        Node below = b.AddNode("below");
        b.AddResistance("small", top, below, 1e-3);
        b.AddResistance("large", below, ground, 1e9);
        CircuitState s = Solved(b.Build());
        double amperes = 64 / (1e6 + 1e-3 + 1e9);
        Assert.Equal(1e9 * amperes, s.Voltage(below), 1e-13 * 64);
        Assert.Equal(64 - (1e6 * amperes), s.Voltage(top), 1e-13 * 64);
    }

    /// <summary>64 V behind 1 mΩ, 64,000 A of short circuit, on an insulation of 10 and 30 MΩ: the poles lie to the frame as the two divide them. Source: the divider.</summary>
    [Fact]
    public void Source_OfThousandsOfAmperes_LiesToItsInsulationExactly()
    {
        CircuitBuilder b = new();
        Node ground = Ground(b);
        Node minus = b.AddNode("minus"), plus = b.AddNode("plus");
        b.AddSource("source", minus, plus, 1e-3, b.AddInput("volts", 64));
        b.AddResistance("of minus", minus, ground, 10e6);
        b.AddResistance("of plus", plus, ground, 30e6);
        CircuitState s = Solved(b.Build());
        Assert.Equal(48, s.Voltage(plus), 1e-8); // 1 mΩ of 40 MΩ is the rest
        Assert.Equal(3 * -s.Voltage(minus), s.Voltage(plus), 1e-13 * 64);
    }

    /// <summary>A bridge of four diodes, 0.7 V each, whichever way its supply lies. Source: any text of electronics.</summary>
    [Theory]
    [InlineData(24)]
    [InlineData(-24)]
    public void Bridge_OfDiodes_TurnsEitherPolarityTheSameWay(double volts)
    {
        CircuitBuilder b = new();
        Node ground = Ground(b);
        Node supply = Supply(b, ground, volts, 0.1);
        Node plus = b.AddNode("plus");
        Node minus = b.AddNode("minus");
        b.AddDiode("1", supply, plus, 0.7, 0.01);
        b.AddDiode("2", ground, plus, 0.7, 0.01);
        b.AddDiode("3", minus, supply, 0.7, 0.01);
        b.AddDiode("4", minus, ground, 0.7, 0.01);
        Branch load = b.AddResistance("load", plus, minus, 10);
        Assert.Equal((24 - 1.4) / (10 + 0.1 + 0.02), Solved(b.Build()).Current(load), 1e-5);
    }

    internal static CircuitState Solved(Circuit circuit)
    {
        CircuitState state = circuit.NewState();
        circuit.Solve(circuit.NewInputs(), state);
        return state;
    }

    internal static Node Ground(CircuitBuilder b)
    {
        Node ground = b.AddNode("ground");
        b.Hold(ground);
        return ground;
    }

    internal static Node Supply(CircuitBuilder b, Node ground, double volts, double ohms)
    {
        Node plus = b.AddNode("plus of the supply");
        b.AddSource("supply", ground, plus, ohms, b.AddInput("volts of the supply", volts));
        return plus;
    }

    private static (double Into, double End) Ladder(int sections, double series, double shunt, double volts)
    {
        CircuitBuilder b = new();
        Node ground = Ground(b);
        Node at = b.AddNode("start");
        b.Hold(at, b.AddInput("volts", volts));
        Branch? first = null;
        for (int i = 0; i < sections; i++)
        {
            Node next = b.AddNode($"node {i}");
            Branch branch = b.AddResistance($"series {i}", at, next, series);
            first ??= branch;
            b.AddResistance($"shunt {i}", next, ground, shunt);
            at = next;
        }

        CircuitState s = Solved(b.Build());
        return (s.Current(first!.Value), s.Voltage(at));
    }

    private static Delivery Into(double ohms)
    {
        CircuitBuilder b = new();
        Node ground = Ground(b);
        Node top = Supply(b, ground, 64, 0.030);
        Branch load = b.AddResistance("load", top, ground, ohms);
        CircuitState s = Solved(b.Build());
        return new(s.Current(load), s.Voltage(top));
    }

    private sealed record Delivery(double Amperes, double Volts)
    {
        public double Power => Amperes * Volts;
    }
}
