using CsCheck;
using Sightglass.Network.Compile;
using Sightglass.Network.Laws.Common;
using Sightglass.Network.Laws.Liquid;
using Sightglass.Network.Stores;

namespace Sightglass.Network.Tests.Compile;

/// <summary>
/// A network without loops is factored without fill, whatever leaks from it: a leaf has one neighbour, so that taking leaves first adds no place
/// (Parter 1961, The Use of Linear Graphs in Gauss Elimination, from memory).
/// </summary>
public sealed class FillTests
{
    private const int Stores = 5000;

    [Fact]
    public void Build_ChainWithALeakAtEveryStore_NoFill() =>
        Assert.Equal(PlacesWithoutFill, Build(i => i - 1).FactoredValues);

    [Fact]
    public void Build_StarWithALeakAtEveryStore_NoFill() =>
        Assert.Equal(PlacesWithoutFill, Build(_ => 0).FactoredValues);

    [Fact]
    public void Build_TreeWithALeakAtEveryStore_NoFill() =>
        Gen.Double[0, 1].Array[Stores].Holds(shares => Assert.Equal(PlacesWithoutFill, Build(i => Math.Min((int)(shares[i] * i), i - 1)).FactoredValues), 5);

    /// <summary>A loop is opened by one further path, which costs no more than one place on either side for each store that it goes round.</summary>
    [Fact]
    public void Build_RingWithALeakAtEveryStore_FillInProportion() =>
        Assert.InRange(Build(i => i - 1, (0, Stores - 1)).FactoredValues, PlacesWithoutFill, PlacesWithoutFill + (2 * Stores));

    private static int PlacesWithoutFill => Stores + (2 * (Stores - 1));

    private static Topology Build(Func<int, int> neighbour, params ReadOnlySpan<(int A, int B)> further)
    {
        NetworkBuilder b = new();
        Input open = b.AddInput(1);
        Amount[] stores = new Amount[Stores];
        for (int i = 0; i < Stores; i++)
        {
            stores[i] = b.AddStore<LinearStore>($"store {i}", LinearStore.ParametersOf(1e5, 1, 1e-5), [1], [1e5]).First;
            Join(stores[i], b.AddBoundary<FixedStore>($"leak {i}", [Physical.Atmosphere]).First);
            if (i > 0) Join(stores[i], stores[neighbour(i)]);
        }

        foreach ((int x, int y) in further) Join(stores[x], stores[y]);
        return b.Build();

        void Join(Amount from, Amount to) =>
            b.AddPath<LiquidOrifice>("path", [from, to], [new(from, to)], LiquidOrifice.ParametersOf(0.62, 1e-6, 1000, 1e-6), [open]);
    }
}
