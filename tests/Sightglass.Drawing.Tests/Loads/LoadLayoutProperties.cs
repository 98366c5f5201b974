using System.Collections.Immutable;
using CsCheck;
using Sightglass.Drawing.Loads;
using Sightglass.Tests.Support;

namespace Sightglass.Drawing.Tests.Loads;

/// <summary>Any loads on two to eight axles anywhere, at least 1.6 m apart.</summary>
public sealed class LoadLayoutProperties
{
    private static readonly LoadOptions[] s_options = [new(), LoadOptions.Narrow, new() { WriteIn = true }];

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    public void Bars_AnyMachine_AreInOrderInProportionAndApart(int how) =>
        Gen.Select(Gen.Double[1.6, 4].Array[2, 8], Gen.Double[0.01, 30].Array[16], Gen.Bool).Holds((gaps, loads, turned) =>
        {
            double x = 1;
            ImmutableArray<LoadAxle> axles = [.. gaps.Select((g, i) => new LoadAxle($"axle {i}", $"Axle {i}", x += g, i % 2 == 0 ? 16_500 : null, 1000))];
            LoadInput input = LoadInput.Of(DemoBooks.Curlew, "trucks") with { Axles = axles, Springs = [], Masses = [], From = 0, To = x + 2, IsTurned = turned };
            LoadGeometry.Check(input, LoadGeometry.Loads(input, loads), s_options[how]);
        });
}
