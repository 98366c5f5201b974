using CsCheck;
using Sightglass.Network.Laws;

namespace Sightglass.Network.Tests.Probes;

/// <summary>A law with draws of its arguments, for the properties that every law must have.</summary>
public sealed record LawCase(
    string Name,
    string Covers,
    Gen<LawInputs> Draws,
    double[] Steps,
    int Flows,
    Func<LawInputs, (double[] Flows, double[] Slopes)> Evaluate,
    Func<LawInputs[], (double[] Flows, double[] Slopes)[]> EvaluateLanes)
{
    /// <summary>Steps smaller than this are of void shares, Pa.</summary>
    private const double SmallestOfPressures = 1e-5;

    /// <summary>Which potential is the second end's pressure.</summary>
    public int Second { get; init; } = 1;

    /// <summary>False where a law only promises its total to be monotone.</summary>
    public bool Monotone { get; init; } = true;

    /// <summary>How far a potential is moved when slopes are compared with differences: a pressure further where the pressures differ more.</summary>
    public double StepOf(int potential, LawInputs inputs) =>
        Steps[potential] < SmallestOfPressures ? Steps[potential] : Steps[potential] + (1e-4 * Math.Abs(inputs.Potentials[0] - inputs.Potentials[Second]));

    /// <param name="steps">How far each potential is moved at least when slopes are compared with differences.</param>
    public static LawCase Of<TLaw>(string name, Gen<LawInputs> draws, params double[] steps)
        where TLaw : ILaw =>
        new(
            name,
            typeof(TLaw).Name.Split('`')[0],
            draws,
            steps,
            TLaw.Flows,
            c => LawProbe.Evaluate<TLaw>(c.Potentials, c.Parameters, c.Inputs),
            cs => LawProbe.EvaluateLanes<TLaw>([.. cs.Select(c => (c.Potentials, c.Parameters, c.Inputs))]));

    public override string ToString() => Name;
}
