using CsCheck;
using Sightglass.Network.Laws;
using Sightglass.Network.Tests.Probes;

namespace Sightglass.Network.Tests.Laws;

/// <summary>What the kernel relies on, of every law.</summary>
public sealed class LawProperties
{
    public static IEnumerable<TheoryDataRow<string>> Names => LawCases.All.Select(c => new TheoryDataRow<string>(c.Name));

    public static IEnumerable<TheoryDataRow<string>> NamesOfMonotone => LawCases.All.Where(c => c.Monotone).Select(c => new TheoryDataRow<string>(c.Name));

    [Fact]
    public void Cases_OfTheProject_CoverEveryLaw()
    {
        IEnumerable<string> laws = typeof(ILaw).Assembly.GetTypes()
            .Where(t => t is { IsValueType: true } && t.GetInterfaces().Contains(typeof(ILaw)))
            .Select(t => t.Name.Split('`')[0]);
        Assert.Empty(laws.Except(LawCases.All.Select(c => c.Covers)));
    }

    [Theory, MemberData(nameof(Names))]
    public void Slopes_AnyPotentials_AreThoseOfTheFlows(string name)
    {
        LawCase law = Named(name);
        Gen.Select(law.Draws, Gen.Double[0.1, 1]).Holds(
            (inputs, share) =>
            {
                for (int j = 0; j < inputs.Potentials.Length; j++)
                {
                    double half = share * law.StepOf(j, inputs);
                    Slope.Check(x => law.Evaluate(inputs.With(j, x)), inputs.Potentials, half, j);
                }
            },
            iter: 600);
    }

    [Theory, MemberData(nameof(Names))]
    public void Slopes_BisectedTowardsTheirGreatestJump_MeetThere(string name)
    {
        LawCase law = Named(name);
        Gen.Select(law.Draws, law.Draws).Holds(
            (start, end) => Slope.CheckNoJump(
                t => law.Evaluate(start with { Potentials = Between(start.Potentials, end.Potentials, t) }).Slopes), iter: 200);
    }

    [Theory, MemberData(nameof(NamesOfMonotone))]
    public void Flows_RisingPotential_FollowTheirOrder(string name)
    {
        LawCase law = Named(name);
        Gen.Select(law.Draws, Draw.Decades(1e-6, 1e6)).Holds(
            (inputs, rise) =>
            {
                double before = law.Evaluate(inputs).Flows[0];
                double first = law.Evaluate(inputs.With(0, inputs.Potentials[0] + rise)).Flows[0];
                int secondAt = law.Second;
                double second = law.Evaluate(inputs.With(secondAt, inputs.Potentials[secondAt] + rise)).Flows[0];
                double rounding = 1e-12 * (Math.Abs(before) + Math.Abs(first) + Math.Abs(second));
                Assert.True(first >= before - rounding, $"{before:R} falls to {first:R} by {rise:R} more at the first end: {inputs}");
                Assert.True(second <= before + rounding, $"{before:R} rises to {second:R} by {rise:R} more at the second end: {inputs}");
            },
            iter: 2000);
    }

    [Theory, MemberData(nameof(Names))]
    public void Values_EqualOrZeroPotentials_AreFinite(string name)
    {
        LawCase law = Named(name);
        law.Draws.Holds(
            inputs =>
            {
                CheckFinite(law, inputs);
                CheckFinite(law, inputs.With(law.Second, inputs.Potentials[0]));
                CheckFinite(law, inputs with { Potentials = new double[inputs.Potentials.Length] });
                CheckFinite(law, inputs with { Inputs = new double[inputs.Inputs.Length] });
            },
            iter: 500);
    }

    [Theory, MemberData(nameof(Names))]
    public void Lanes_AnyCases_HaveTheBitsOfOne(string name)
    {
        LawCase law = Named(name);
        law.Draws.Array[8].Holds(
            cases =>
            {
                (double[] Flows, double[] Slopes)[] lanes = law.EvaluateLanes(cases);
                for (int i = 0; i < cases.Length; i++)
                {
                    (double[] flows, double[] slopes) = law.Evaluate(cases[i]);
                    Assert.Equal(Numbers.Bits(flows), Numbers.Bits(lanes[i].Flows));
                    Assert.Equal(Numbers.Bits(slopes), Numbers.Bits(lanes[i].Slopes));
                }
            },
            iter: 200);
    }

    private static LawCase Named(string name) => LawCases.All.Single(c => c.Name == name);

    private static double[] Between(double[] from, double[] to, double t) => [.. from.Zip(to, (a, b) => a + (t * (b - a)))];

    private static void CheckFinite(LawCase law, LawInputs inputs)
    {
        (double[] flows, double[] slopes) = law.Evaluate(inputs);
        Assert.True(flows.Concat(slopes).All(double.IsFinite), $"not finite: {inputs}");
    }
}
