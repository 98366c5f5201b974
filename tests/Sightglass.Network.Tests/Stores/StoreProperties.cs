using CsCheck;
using Sightglass.Network.Stores;
using Sightglass.Network.Tests.Probes;

namespace Sightglass.Network.Tests.Stores;

/// <summary>What the kernel relies on, of every store.</summary>
public sealed class StoreProperties
{
    public static IEnumerable<TheoryDataRow<string>> Names => StoreCases.All.Select(c => new TheoryDataRow<string>(c.Name));

    public static IEnumerable<TheoryDataRow<string>> NamesOfDerived => StoreCases.All.Where(c => c.Derived).Select(c => new TheoryDataRow<string>(c.Name));

    [Fact]
    public void Cases_OfTheProject_CoverEveryStore()
    {
        IEnumerable<string> stores = typeof(IStore).Assembly.GetTypes()
            .Where(t => t is { IsValueType: true } && t.GetInterfaces().Contains(typeof(IStore)))
            .Select(t => t.Name);
        Assert.Empty(stores.Except(StoreCases.All.Select(c => c.Covers)));
    }

    [Theory, MemberData(nameof(NamesOfDerived))]
    public void Capacities_AnyAmounts_AreThoseOfThePotentials(string name)
    {
        StoreCase store = Named(name);
        Gen.Select(store.Draws, Gen.Double[0.1, 1]).Holds(
            (inputs, share) =>
            {
                for (int j = 0; j < inputs.Amounts.Length; j++)
                {
                    Slope.Check(x => store.WithSlopes(inputs.With(j, x)), inputs.Amounts, share * store.Steps[j], j);
                }
            },
            iter: 1500);
    }

    [Theory, MemberData(nameof(NamesOfDerived))]
    public void Capacities_BisectedTowardsTheirGreatestJump_MeetThere(string name)
    {
        StoreCase store = Named(name);
        Gen.Select(store.Draws, store.Draws).Holds(
            (start, end) => Slope.CheckNoJump(
                t => store.WithSlopes(start with { Amounts = [.. start.Amounts.Zip(end.Amounts, (a, b) => a + (t * (b - a)))] }).Slopes),
            iter: 300);
    }

    [Theory, MemberData(nameof(NamesOfDerived))]
    public void Capacities_AnyAmounts_AreAboveZeroAndFinite(string name)
    {
        StoreCase store = Named(name);
        store.Draws.Holds(
            inputs =>
            {
                (double[] p, double[] c) = store.Evaluate(inputs);
                double determinant = c.Length == 1 ? c[0] : (c[0] * c[3]) - (c[1] * c[2]);
                Assert.All(p.Concat(c), x => Assert.True(double.IsFinite(x), $"not finite: {inputs}"));
                Assert.True(c.Length == 1 ? determinant > 0 : determinant != 0, $"cannot be inverted: {inputs}");
                Assert.All(store.WithSlopes(inputs).Slopes, x => Assert.True(double.IsFinite(x), $"no finite inverse: {inputs}"));
            },
            iter: 1500);
    }

    [Theory, MemberData(nameof(NamesOfDerived))]
    public void Potentials_MoreInTheStore_Rise(string name)
    {
        StoreCase store = Named(name);
        Gen.Select(store.Draws, Draw.Decades(1e-9, 1)).Holds(
            (inputs, more) =>
            {
                double before = store.Evaluate(inputs).Potentials[0];
                double after = store.Evaluate(inputs.With(0, inputs.Amounts[0] + more)).Potentials[0];
                Assert.True(after >= before - (1e-12 * Math.Abs(before)), $"{before:R} falls to {after:R} by {more:R} more: {inputs}");
            },
            iter: 1500);
    }

    [Theory, MemberData(nameof(Names))]
    public void Lanes_AnyCases_HaveTheBitsOfOne(string name)
    {
        StoreCase store = Named(name);
        store.Draws.Array[8].Holds(
            cases =>
            {
                (double[] Potentials, double[] Capacities)[] lanes = store.EvaluateLanes(cases);
                for (int i = 0; i < cases.Length; i++)
                {
                    (double[] p, double[] c) = store.Evaluate(cases[i]);
                    Assert.Equal(Numbers.Bits(p), Numbers.Bits(lanes[i].Potentials));
                    Assert.Equal(Numbers.Bits(c), Numbers.Bits(lanes[i].Capacities));
                }
            },
            iter: 200);
    }

    private static StoreCase Named(string name) => StoreCases.All.Single(c => c.Name == name);
}
