using System.Collections.Immutable;

namespace Sightglass.Reference.Tests.Networks;

/// <summary>How far a solution is from the reference, over all samples and stores; same unit as the samples.</summary>
/// <param name="Rms">Root of the mean square.</param>
/// <param name="Percentile999">The error that one sample in a thousand exceeds (nearest rank).</param>
/// <param name="Worst">The largest error.</param>
/// <param name="WorstStore">Where it is.</param>
/// <param name="WorstTime">When it is, s.</param>
public sealed record ReferenceComparison(double Rms, double Percentile999, double Worst, string WorstStore, double WorstTime)
{
    /// <summary>Compares sample by sample; both tables must have the same rows and columns.</summary>
    public static ReferenceComparison Between(SampleTable expected, ImmutableArray<ImmutableArray<double>> actual)
    {
        if (actual.Length != expected.Rows.Length || actual.Any(r => r.Length != expected.Columns.Length))
        {
            throw new ArgumentException("The tables differ in shape.", nameof(actual));
        }

        List<double> errors = [];
        (double worst, int store, int row) = (-1, 0, 0);
        for (int i = 0; i < actual.Length; i++)
        {
            for (int j = 0; j < expected.Columns.Length; j++)
            {
                double error = Math.Abs(actual[i][j] - expected.Rows[i][j]);
                errors.Add(double.IsNaN(error) ? double.PositiveInfinity : error);
                if (errors[^1] > worst)
                {
                    (worst, store, row) = (errors[^1], j, i);
                }
            }
        }

        double rms = Math.Sqrt(errors.Sum(e => e * e) / errors.Count);
        errors.Sort();
        double percentile = errors[(int)Math.Ceiling(0.999 * errors.Count) - 1];
        return new(rms, percentile, worst, expected.Columns[store], expected.Times[row]);
    }

    /// <summary>Is every figure within its limit?</summary>
    public bool IsWithin(double rms, double percentile999, double worst) => Rms <= rms && Percentile999 <= percentile999 && Worst <= worst;

    public override string ToString() =>
        FormattableString.Invariant($"rms {Rms:0.00e+0}, 99.9 % within {Percentile999:0.00e+0}, worst {Worst:0.00e+0} at {WorstStore}, {WorstTime:0.#} s");
}
