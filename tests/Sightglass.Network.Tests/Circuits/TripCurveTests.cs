using CsCheck;
using Sightglass.Network.Circuits;
using Sightglass.Network.Laws.Common;
using Sightglass.Network.Stores;
using Sightglass.Network.Tests.Probes;

namespace Sightglass.Network.Tests.Circuits;

/// <summary>When breakers open.</summary>
public sealed class TripCurveTests
{
    private static readonly TripCurve s_curve = new((1.35, 1800), (2, 120), (5, 12), (8, 4), (8.5, 0.02), (20, 0.02));

    /// <summary>On logarithmic scales a point halfway between two has the geometric mean of both.</summary>
    [Theory]
    [InlineData(2, 120)]
    [InlineData(3.1622776601683795, 37.947331922020554)]
    [InlineData(8, 4)]
    [InlineData(12, 0.02)]
    [InlineData(500, 0.02)]
    [InlineData(1.3, double.PositiveInfinity)]
    [InlineData(0, double.PositiveInfinity)]
    public void SecondsAt_AMultiple_IsOnTheLineBetweenThePoints(double multiple, double seconds)
    {
        if (double.IsInfinity(seconds))
        {
            Assert.Equal(seconds, s_curve.SecondsAt(multiple));
            Assert.Equal(0, s_curve.RateAt(multiple));
            return;
        }

        Assert.Equal(seconds, s_curve.SecondsAt(multiple), 1e-12 * seconds);
    }

    [Fact]
    public void SecondsAt_MoreCurrent_IsNeverLonger() =>
        Gen.Select(Gen.Double[1.35, 30], Gen.Double[0, 5]).Holds((m, more) => Assert.True(s_curve.SecondsAt(m + more) <= s_curve.SecondsAt(m) * (1 + 1e-12)));

    [Fact]
    public void Points_OutOfOrder_AreRefused()
    {
        Assert.Throws<ArgumentException>(() => new TripCurve((2, 10), (1, 20)));
        Assert.Throws<ArgumentException>(() => new TripCurve((1, 10), (2, 20)));
        Assert.Throws<ArgumentException>(() => new TripCurve((1, 10)));
    }

    /// <summary>Standard curves at a multiple, worked out by hand from t = A/(Mᵖ − 1) + B. Sources: IEC 60255-151, IEEE C37.112; constants from memory.</summary>
    [Fact]
    public void InverseTime_OfTheStandards_HasTheirTimes()
    {
        Assert.Equal(2.9706, InverseTime.IecStandard.SecondsAt(10), 1e-4);
        Assert.Equal(13.5, InverseTime.IecVery.SecondsAt(2), 1e-12);
        Assert.Equal(80.0 / 24, InverseTime.IecExtremely.SecondsAt(5), 1e-12);
        Assert.Equal((19.61 / 24) + 0.491, InverseTime.IeeeVery.SecondsAt(5), 1e-12);
        Assert.Equal(3 * ((28.2 / 99) + 0.1217), InverseTime.IeeeExtremely.SecondsAt(10, 3), 1e-12);
        Assert.Equal((0.0515 / (Math.Pow(4, 0.02) - 1)) + 0.1140, InverseTime.IeeeModerately.SecondsAt(4), 1e-9);
        Assert.Equal(double.PositiveInfinity, InverseTime.IecVery.SecondsAt(1));
    }

    /// <summary>The bimetal as the network carries it, a follower of the current's square, opens when the closed form says. Source: first-order heating.</summary>
    [Theory]
    [InlineData(1.2, 0)]
    [InlineData(3, 0)]
    [InlineData(2, 0.64)]
    public void Bimetal_AsAFollower_OpensAtTheTimeOfTheClosedForm(double multiple, double before)
    {
        SmallNetwork net = new();
        int bimetal = net.Add<FollowerStore>([], before);
        int nowhere = net.Add<FixedStore>([0], 0);
        net.Join<Lag>(Lag.Follower(90), [multiple * multiple], nowhere, bimetal, (bimetal, 0), (bimetal, 0));
        double seconds = net.RunUntil(() => 1 - net.Potential(bimetal), 2000);
        Assert.Equal(InverseTime.BimetalSeconds(multiple, 90, before), seconds, 1e-5 * seconds);
        Assert.Equal(90 * Math.Log(((multiple * multiple) - before) / ((multiple * multiple) - 1)), seconds, 1e-5 * seconds);
    }
}
