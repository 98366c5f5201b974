using Sightglass.Network.Laws.Common;
using Sightglass.Network.Laws.Motion;
using Sightglass.Network.Stores;
using Sightglass.Network.Tests.Probes;

namespace Sightglass.Network.Tests.Laws;

/// <summary>A mass and a warm body as stores with paths, against their closed forms. Expected values were integrated independently when the list was made.</summary>
public sealed class MotionAndHeatTests
{
    /// <summary>472.5 t, 52 kN, 12 N/(m/s)²: to 25 m/s in 239.13966 s over 3,066.4173 m. Source: derived, t = m/√(FC)·artanh(v√(C/F)).</summary>
    [Fact]
    public void A4_08_Mass_UnderAForceAgainstDrag_TakesTheTimeOfTheClosedForm()
    {
        SmallNetwork net = new();
        int train = net.Add<LinearStore>(LinearStore.ParametersOf(0, 0, 472.5e3), 0);
        int way = net.Add<LinearStore>(LinearStore.ParametersOf(0, 0, 1), 0);
        int ground = net.Add<FixedStore>([0], 0);
        net.Join<SetFlow>([], [52e3], ground, train);
        net.Join<SpeedResistance>(SpeedResistance.ParametersOf(0, 0, 12), [1], train, ground);
        net.Join<LinearPath>([1], [1], ground, way, (train, 0), (ground, 0));
        Assert.Equal(239.13966, net.RunUntil(() => 25 - net.Potential(train), 400), 239 * 1e-4);
        Assert.Equal(3066.4173, net.Amount(way), 3066 * 1e-4);
    }

    /// <summary>A constant resistance stops a coasting mass: v = v₀ − a·t/m down to a crawl. Source: Newton.</summary>
    [Fact]
    public void Mass_Coasting_SlowsEvenlyUnderAConstantResistance()
    {
        SmallNetwork net = new();
        int train = net.Add<LinearStore>(LinearStore.ParametersOf(0, 0, 400e3), 400e3 * 10);
        int ground = net.Add<FixedStore>([0], 0);
        net.Join<SpeedResistance>(SpeedResistance.ParametersOf(8e3, 0, 0), [1], train, ground);
        Assert.Equal(400, net.RunUntil(() => net.Potential(train) - 2, 600), 400 * 1e-5);
    }

    /// <summary>500 kJ/K, 250 W/K, 10 °C around: from 95 °C to 44.558421 °C in 1,800 s; with 12 kW from 10 °C to 27.393849 °C in 900 s. Source: Incropera ch. 5 (from memory).</summary>
    [Theory]
    [InlineData(95, 0, 1800, 44.558421)]
    [InlineData(10, 12e3, 900, 27.393849)]
    [InlineData(95, 12e3, 1800, 73.043077)]
    public void A5_01_WarmBody_LosingHeat_HasTheTemperatureOfTheClosedForm(double start, double watts, double seconds, double expected)
    {
        SmallNetwork net = new();
        int body = net.Add<LinearStore>(LinearStore.ParametersOf(0, 0, 500e3), 500e3 * (start + 273.15));
        int air = net.Add<FixedStore>([283.15], 0);
        net.Join<LinearPath>(LinearPath.ParametersOf(250), [1], body, air);
        net.Join<SetFlow>([], [watts], air, body);
        net.RunTo(seconds);
        Assert.Equal(expected + 273.15, net.Potential(body), 1e-5 * 300);
    }
}
