using CsCheck;
using Sightglass.Basics.Numbers;
using Sightglass.Network.Laws;
using Sightglass.Reference.Tests.Laws;

namespace Sightglass.Reference.Tests;

/// <summary>The laws of the reference problems are what the kernel asks of a law: derivatives true, lanes equal to the scalar.</summary>
public sealed class LawProperties
{
    private static readonly Gen<double> s_pressure = Gen.Double[0.2, 12];

    [Fact]
    public void Friction_Anywhere_HasItsDerivatives() => Check<FrictionLaw>([40, 1e-3], []);

    [Fact]
    public void Head_Anywhere_HasItsDerivatives() => Check<HeadLaw>([0.06, 0.01, 1.5], [0.7]);

    [Fact]
    public void PlainOrifice_Anywhere_HasItsDerivatives() => Check<PlainOrificeLaw>([15], [0.8]);

    [Fact]
    public void CheckOrifice_Anywhere_HasItsDerivatives() => Check<CheckOrificeLaw>([0.3, 0.02, 1 / 0.05], []);

    [Fact]
    public void FixedTargetOrifice_Anywhere_HasItsDerivatives() => Check<FixedTargetOrificeLaw>([0.5, -1, 1], [7.2, 0.4]);

    [Fact]
    public void TrackingOrifice_Anywhere_HasItsDerivatives() => Check<TrackingOrificeLaw>([0.5, 1, 1, -2.5, 1.013, 4.813, 0.1, 1 / 0.2], [18.7, 0.6]);

    [Fact]
    public void Relay_Anywhere_HasItsDerivatives() => Check<RelayLaw>([0.25], []);

    [Fact]
    public void Source_Anywhere_HasItsDerivatives() => Check<SourceLaw>([], [-0.1]);

    private static void Check<TLaw>(double[] k, double[] u)
        where TLaw : ILaw =>
        s_pressure.Array[TLaw.Potentials].Holds(p =>
        {
            (double q, double[] dq) = Evaluate<TLaw>(p, k, u);
            for (int i = 0; i < p.Length; i++)
            {
                double h = 1e-8;
                double slope = (Evaluate<TLaw>(Moved(p, i, h), k, u).Q - Evaluate<TLaw>(Moved(p, i, -h), k, u).Q) / (2 * h);

                // The laws are once differentiable: within h of a kink the difference quotient is off by h times the second derivative.
                Assert.True(Math.Abs(dq[i] - slope) <= 1e-3 * (1 + Math.Abs(slope)), $"{TLaw.Potentials}: {i}: {dq[i]} {slope}");
            }

            (double inLanes, double[] dInLanes) = EvaluateInLanes<TLaw>(p, k, u);
            Assert.Equal(BitConverter.DoubleToInt64Bits(q), BitConverter.DoubleToInt64Bits(inLanes));
            Assert.Equal(dq, dInLanes);
        });

    private static double[] Moved(double[] p, int i, double h)
    {
        double[] moved = [.. p];
        moved[i] += h;
        return moved;
    }

    private static (double Q, double[] Dq) Evaluate<TLaw>(double[] p, double[] k, double[] u)
        where TLaw : ILaw
    {
        Scalar[] result = Run<TLaw, Scalar>(p, k, u);
        return (result[0].V, [.. result.Skip(1).Select(d => d.V)]);
    }

    private static (double Q, double[] Dq) EvaluateInLanes<TLaw>(double[] p, double[] k, double[] u)
        where TLaw : ILaw
    {
        Lanes[] result = Run<TLaw, Lanes>(p, k, u);
        return (result[0][5], [.. result.Skip(1).Select(d => d[5])]);
    }

    private static T[] Run<TLaw, T>(double[] p, double[] k, double[] u)
        where TLaw : ILaw
        where T : struct, IReal<T>
    {
        T[] pp = [.. p.Select(T.Of)];
        T[] kk = [.. k.Select(T.Of), T.Of(0)];
        T[] uu = [.. u.Select(T.Of), T.Of(0)];
        T[] result = new T[1 + TLaw.Potentials];
        TLaw.Evaluate(ref pp[0], ref kk[0], ref uu[0], ref result[0], ref result[1]);
        return result;
    }
}
