using Sightglass.Basics.Numbers;
using Sightglass.Network.Stores;

namespace Sightglass.Network.Tests.Probes;

/// <summary>Calls a store with plain numbers, one case or eight.</summary>
public static class StoreProbe
{
    /// <summary>Potentials and capacities of one case.</summary>
    public static (double[] Potentials, double[] Capacities) Evaluate<TStore>(double[] amounts, double[] parameters)
        where TStore : IStore
    {
        Assert.Equal(TStore.Amounts, amounts.Length);
        Assert.Equal(TStore.Parameters, parameters.Length);
        Scalar[] p = new Scalar[TStore.Amounts];
        Scalar[] c = new Scalar[TStore.Amounts * TStore.Amounts];
        TStore.Evaluate(ref Numbers.Of(amounts)[0], ref Numbers.Of(parameters)[0], ref p[0], ref c[0]);
        return (Numbers.From(p), Numbers.From(c));
    }

    /// <summary>The first potential of one case.</summary>
    public static double Potential<TStore>(double amount, double[] parameters)
        where TStore : IStore =>
        Evaluate<TStore>([amount], parameters).Potentials[0];

    /// <summary>Potentials and capacities of eight cases in lanes.</summary>
    public static (double[] Potentials, double[] Capacities)[] EvaluateLanes<TStore>((double[] Amounts, double[] Parameters)[] cases)
        where TStore : IStore
    {
        Lanes[] p = new Lanes[TStore.Amounts];
        Lanes[] c = new Lanes[TStore.Amounts * TStore.Amounts];
        TStore.Evaluate(
            ref Numbers.Beside([.. cases.Select(x => x.Amounts)])[0], ref Numbers.Beside([.. cases.Select(x => x.Parameters)])[0], ref p[0], ref c[0]);
        return [.. Enumerable.Range(0, Lanes.Count).Select(i => (Numbers.Lane(p, i), Numbers.Lane(c, i)))];
    }
}
