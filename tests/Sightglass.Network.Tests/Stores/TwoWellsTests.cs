using Sightglass.Network.Laws.Common;
using Sightglass.Network.Stores;
using Sightglass.Network.Tests.Probes;

namespace Sightglass.Network.Tests.Stores;

/// <summary>The kinetic accumulator as stores and a path against its closed form. Source: Manwell and McGowan 1993 (from memory).</summary>
public sealed class TwoWellsTests
{
    private const double Charge = 400 * 3600;
    private const double Share = 0.3;
    private const double Rate = 4.5 / 3600;

    [Theory]
    [InlineData(20)]
    [InlineData(150)]
    [InlineData(600)]
    public void Wells_UnderASteadyCurrent_FollowTheClosedForm(double amperes)
    {
        (SmallNetwork net, int available, int bound) = Drained(amperes);
        foreach (double t in new[] { 60.0, 300, 600 })
        {
            net.RunTo(t);
            double e = Math.Exp(-Rate * t);
            double q1 = (Charge * Share * e) + (((Charge * Rate * Share) - amperes) * (1 - e) / Rate) - (amperes * Share * ((Rate * t) - 1 + e) / Rate);
            double q2 = (Charge * (1 - Share) * e) + (Charge * (1 - Share) * (1 - e)) - (amperes * (1 - Share) * ((Rate * t) - 1 + e) / Rate);
            Assert.Equal(q1, net.Amount(available), 1e-8 * Charge);
            Assert.Equal(q2, net.Amount(bound), 1e-8 * Charge);
        }
    }

    /// <summary>What is drawn is gone and nothing else: the charge in both is what was there less current times time.</summary>
    [Fact]
    public void Wells_UnderASteadyCurrent_LoseWhatIsDrawn()
    {
        (SmallNetwork net, int available, int bound) = Drained(300);
        net.RunTo(900);
        Assert.Equal(Charge - (300 * 900), net.Amount(available) + net.Amount(bound), 1e-9 * Charge);
    }

    /// <summary>Emptied by a great current, it has charge at hand again after a rest: levels come together as e^(−k′t).</summary>
    [Fact]
    public void Wells_AfterARest_HaveChargeAtHandAgain()
    {
        TwoWells sheets = TwoWells.Of(Charge, Share, Rate);
        SmallNetwork net = new();
        int available = net.Add<LinearStore>(sheets.Available, 0);
        int bound = net.Add<LinearStore>(sheets.Bound, sheets.Start.Bound);
        net.Join<LinearPath>(sheets.Path, [1], bound, available);
        net.RunTo(1800);
        double level = sheets.Start.Bound;
        Assert.Equal(Share * level * (1 - Math.Exp(-Rate * 1800)), net.Amount(available), 1e-8 * Charge);
    }

    private static (SmallNetwork Net, int Available, int Bound) Drained(double amperes)
    {
        TwoWells sheets = TwoWells.Of(Charge, Share, Rate);
        SmallNetwork net = new();
        int available = net.Add<LinearStore>(sheets.Available, sheets.Start.Available);
        int bound = net.Add<LinearStore>(sheets.Bound, sheets.Start.Bound);
        int outside = net.Add<FixedStore>([0], 0);
        net.Join<LinearPath>(sheets.Path, [1], bound, available);
        net.Join<SetFlow>([], [amperes], available, outside);
        return (net, available, bound);
    }
}
