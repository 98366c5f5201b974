using Sightglass.Basics.Numbers;
using Sightglass.Network.Laws;

namespace Sightglass.Network.Tests.Probes;

/// <summary>Calls a law with plain numbers, one case or eight.</summary>
public static class LawProbe
{
    /// <summary>Flows and derivatives of one case.</summary>
    public static (double[] Flows, double[] Slopes) Evaluate<TLaw>(double[] potentials, double[] parameters, double[] inputs)
        where TLaw : ILaw
    {
        Assert.Equal(TLaw.Potentials, potentials.Length);
        Assert.Equal(TLaw.Parameters, parameters.Length);
        Assert.Equal(TLaw.Inputs, inputs.Length);
        Scalar[] q = new Scalar[TLaw.Flows];
        Scalar[] dq = new Scalar[TLaw.Flows * TLaw.Potentials];
        TLaw.Evaluate(ref Numbers.Of(potentials)[0], ref Numbers.Of(parameters)[0], ref Numbers.Of(inputs)[0], ref q[0], ref dq[0]);
        return (Numbers.From(q), Numbers.From(dq));
    }

    /// <summary>The first flow of one case.</summary>
    public static double Flow<TLaw>(double[] potentials, double[] parameters, params double[] inputs)
        where TLaw : ILaw =>
        Evaluate<TLaw>(potentials, parameters, inputs).Flows[0];

    /// <summary>Flows and derivatives of eight cases in lanes.</summary>
    public static (double[] Flows, double[] Slopes)[] EvaluateLanes<TLaw>((double[] Potentials, double[] Parameters, double[] Inputs)[] cases)
        where TLaw : ILaw
    {
        Lanes[] q = new Lanes[TLaw.Flows];
        Lanes[] dq = new Lanes[TLaw.Flows * TLaw.Potentials];
        TLaw.Evaluate(
            ref Numbers.Beside([.. cases.Select(c => c.Potentials)])[0],
            ref Numbers.Beside([.. cases.Select(c => c.Parameters)])[0],
            ref Numbers.Beside([.. cases.Select(c => c.Inputs)])[0],
            ref q[0],
            ref dq[0]);
        return [.. Enumerable.Range(0, Lanes.Count).Select(i => (Numbers.Lane(q, i), Numbers.Lane(dq, i)))];
    }
}
