using Sightglass.Reference.Tests.Runs;

namespace Sightglass.Reference.Tests;

/// <summary>The kernel's integrator alone on published stiff problems. Errors are relative to each value but where it says otherwise.</summary>
public sealed class IntegratorTests(ITestOutputHelper output)
{
    /// <summary>
    /// Robertson's problem. At 1e11 s: Bari/CWI test set for initial value problems; the others by an independent Radau run at rtol 1e-11.
    /// </summary>
    [Fact]
    public void A9_01_Robertson_AtFourMoments_HasThePublishedValues()
    {
        double[][] found = new TermSystem((1, 1), (0, 1e-5), (0, 1))
            .Term(1, 2, 0.04, 1)
            .Term(2, 1, 1e4, 2, 3)
            .Term(2, 3, 3e7, 2, 2)
            .At(1e-9, 0.4, 40, 4e5, 1e11);
        Expect(1e-6, found[0], 0.98517211386, 3.3863953790e-5, 0.014794022185);
        Expect(1e-6, found[1], 0.71582706872, 9.1855347646e-6, 0.28416374575);
        Expect(1e-6, found[2], 4.9382745210e-3, 1.9849940880e-8, 0.99506170563);
        Expect(1e-6, found[3], 2.083340149701255e-8, 8.333360770334713e-14, 0.9999999791665050);
    }

    /// <summary>
    /// Van der Pol, μ = 1000: Bari/CWI test set; an independent Radau run agrees to 12 digits. Its unit of time is run as 64 s, since its
    /// jumps are shorter than a tick. y₂ is judged by the height of the jumps.
    /// </summary>
    [Fact]
    public void A9_02_VanDerPol_At2000_HasThePublishedValues()
    {
        const double Unit = 64;
        double[][] found = new TermSystem((2, 2), (0, 1000))
            .Term(0, 1, 1 / Unit, 2)
            .Term(0, 2, 1000 / Unit, 2)
            .Term(0, 2, -1000 / Unit, 1, 1, 2)
            .Term(0, 2, -1 / Unit, 1)
            .At(1e-9, 2000 * Unit);
        Expect(1e-6, found[0], 1.706167732170469, -8.928097010248125e-4);
    }

    /// <summary>HIRES, eight equations of plant physiology: Bari/CWI test set; an independent Radau run agrees to 10 digits.</summary>
    [Fact]
    public void A9_03_Hires_At321_HasThePublishedValues()
    {
        double[][] found = new TermSystem((1, 1), (0, 0.1), (0, 0.1), (0, 0.1), (0, 0.1), (0, 0.1), (0, 5.7e-3), (0.0057, 5.7e-3))
            .Term(1, 2, 1.71, 1)
            .Term(0, 1, 0.43, 2)
            .Term(0, 1, 8.32, 3)
            .Term(0, 1, 0.0007)
            .Term(2, 0, 8.75, 2)
            .Term(3, 0, 10.03, 3)
            .Term(0, 3, 0.43, 4)
            .Term(0, 3, 0.035, 5)
            .Term(0, 4, 8.32, 2)
            .Term(0, 4, 1.71, 3)
            .Term(4, 0, 1.12, 4)
            .Term(5, 0, 1.745, 5)
            .Term(0, 5, 0.43, 6)
            .Term(0, 5, 0.43, 7)
            .Term(6, 7, 280, 6, 8)
            .Term(0, 6, 0.69, 4)
            .Term(0, 6, 1.71, 5)
            .Term(6, 0, 0.43, 6)
            .Term(0, 6, 0.69, 7)
            .Term(7, 8, 1.81, 7)
            .Term(8, 0, 280, 6, 8)
            .At(1e-9, 321.8122);
        Expect(
            1e-6,
            found[0],
            7.371312573325668e-4,
            1.442485726316185e-4,
            5.888729740967575e-5,
            1.175651343283149e-3,
            2.386356198831331e-3,
            6.238968252742796e-3,
            2.849998395185769e-3,
            2.850001604814231e-3);
    }

    /// <summary>Kaps' problem with ε = 1e-5, exact solution e^−2t, e^−t (Dekker and Verwer, from memory).</summary>
    [Fact]
    public void A9_04_Kaps_At1_HasTheExactValues()
    {
        const double Epsilon = 1e-5;
        double[][] found = new TermSystem((1, 1), (1, 1))
            .Term(0, 1, -((1 / Epsilon) + 2), 1)
            .Term(0, 1, 1 / Epsilon, 2, 2)
            .Term(0, 2, 1, 1)
            .Term(0, 2, -1, 2)
            .Term(0, 2, -1, 2, 2)
            .At(1e-8, 1);
        Expect(1e-6, found[0], Math.Exp(-2), Math.Exp(-1));
    }

    private void Expect(double tolerance, double[] found, params double[] expected)
    {
        double[] errors = [.. found.Zip(expected, (f, e) => Math.Abs((f / e) - 1))];
        output.WriteLine(string.Join("  ", errors.Select(e => e.ToString("0.0e-0", System.Globalization.CultureInfo.InvariantCulture))));
        Assert.All(errors, e => Assert.InRange(e, 0, tolerance));
    }
}
