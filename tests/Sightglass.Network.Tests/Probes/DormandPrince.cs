namespace Sightglass.Network.Tests.Probes;

/// <summary>One step of the explicit Runge–Kutta pair of order 5(4) (Dormand and Prince 1980, from memory).</summary>
public static class DormandPrince
{
    private static readonly double[][] s_weights =
    [
        [],
        [1.0 / 5],
        [3.0 / 40, 9.0 / 40],
        [44.0 / 45, -56.0 / 15, 32.0 / 9],
        [19372.0 / 6561, -25360.0 / 2187, 64448.0 / 6561, -212.0 / 729],
        [9017.0 / 3168, -355.0 / 33, 46732.0 / 5247, 49.0 / 176, -5103.0 / 18656],
        [35.0 / 384, 0, 500.0 / 1113, 125.0 / 192, -2187.0 / 6784, 11.0 / 84],
    ];

    private static readonly double[] s_error =
        [71.0 / 57600, 0, -71.0 / 16695, 71.0 / 1920, -17253.0 / 339200, 22.0 / 525, -1.0 / 40];

    /// <returns>The state after the step, and its estimated error as a multiple of what the tolerance allows.</returns>
    public static (double[] Next, double Error) Step(Func<double[], double[]> rates, double[] state, double step, double relativeTolerance)
    {
        double[][] k = new double[s_weights.Length][];
        double[] at = state;
        for (int stage = 0; stage < s_weights.Length; stage++)
        {
            at = [.. state.Select((y, i) => y + (step * Sum(s_weights[stage], k, i)))];
            k[stage] = rates(at);
        }

        double error = state.Select((y, i) => Math.Abs(step * Sum(s_error, k, i)) / (relativeTolerance * (Math.Abs(y) + 1e-3))).Max();
        return (at, double.IsNaN(error) ? double.PositiveInfinity : error);
    }

    private static double Sum(double[] weights, double[][] k, int row)
    {
        double sum = 0;
        for (int j = 0; j < weights.Length; j++) sum += weights[j] * k[j][row];
        return sum;
    }
}
