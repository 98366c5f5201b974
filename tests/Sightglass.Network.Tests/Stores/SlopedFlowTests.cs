using Sightglass.Network.Laws.Common;
using Sightglass.Network.Stores;
using Sightglass.Network.Tests.Probes;

namespace Sightglass.Network.Tests.Stores;

public sealed class SlopedFlowTests
{
    /// <summary>A store behind a resistance comes to rest as a capacitor does: m(t) = m∞ + (m₀ − m∞)·e^(−s·t/C) (any text of circuit theory).</summary>
    [Fact]
    public void Step_SlopeAboutAPoint_ComesToRestAsACapacitor()
    {
        const double capacity = 4;
        const double slope = 0.02;
        const double current = 0.5;
        const double about = 10;
        const double start = 80;
        SmallNetwork net = new();
        int store = net.Add<LinearStore>(LinearStore.ParametersOf(0, 0, capacity), start);
        int outside = net.Add<FixedStore>([0], 0);
        net.Join<SlopedFlow>([], [current, slope, about], store, outside);
        // At rest the flow is 0: current + slope·(p − about) = 0.
        double rest = capacity * (about - (current / slope));
        net.RunTo(300);
        Assert.Equal(rest + ((start - rest) * Math.Exp(-slope * 300 / capacity)), net.Amount(store), 1e-6 * start);
    }
}
