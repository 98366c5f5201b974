using CsCheck;
using Sightglass.Network.Stores;

namespace Sightglass.Network.Tests.Probes;

/// <summary>A store with draws of its arguments, for the properties that every store must have.</summary>
public sealed record StoreCase(
    string Name,
    string Covers,
    Gen<StoreInputs> Draws,
    double[] Steps,
    Func<StoreInputs, (double[] Potentials, double[] Capacities)> Evaluate,
    Func<StoreInputs[], (double[] Potentials, double[] Capacities)[]> EvaluateLanes)
{
    /// <summary>False where the capacity is only formal: a boundary.</summary>
    public bool Derived { get; init; } = true;

    /// <param name="steps">How far each amount is moved when capacities are compared with differences, kg.</param>
    public static StoreCase Of<TStore>(string name, Gen<StoreInputs> draws, params double[] steps)
        where TStore : IStore =>
        new(
            name,
            typeof(TStore).Name,
            draws,
            steps,
            c => StoreProbe.Evaluate<TStore>(c.Amounts, c.Parameters),
            cs => StoreProbe.EvaluateLanes<TStore>([.. cs.Select(c => (c.Amounts, c.Parameters))]));

    /// <summary>Potentials and their slopes by the amounts, row by row: the inverse of the capacities.</summary>
    public (double[] Potentials, double[] Slopes) WithSlopes(StoreInputs inputs)
    {
        (double[] p, double[] c) = Evaluate(inputs);
        if (p.Length == 1) return (p, [1 / c[0]]);
        double determinant = (c[0] * c[3]) - (c[1] * c[2]);
        return (p, [c[3] / determinant, -c[1] / determinant, -c[2] / determinant, c[0] / determinant]);
    }

    public override string ToString() => Name;
}
