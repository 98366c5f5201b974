using Sightglass.Basics.Numbers;

namespace Sightglass.Network.Tests.Probes;

/// <summary>Between plain numbers and the rows that laws and stores read. A row is never empty, so that it can be referred to.</summary>
public static class Numbers
{
    public static Scalar[] Of(double[] values) => values.Length == 0 ? [default] : [.. values.Select(v => new Scalar(v))];

    public static double[] From(Scalar[] values) => [.. values.Select(v => v.V)];

    /// <summary>Eight cases of the same length side by side.</summary>
    public static Lanes[] Beside(double[][] cases)
    {
        Assert.Equal(Lanes.Count, cases.Length);
        return cases[0].Length == 0 ? [default] : [.. cases[0].Select((_, row) => Row(cases, row))];
    }

    public static double[] Lane(Lanes[] values, int lane) => [.. values.Select(v => v[lane])];

    /// <summary>The bits, so that also NaN and signed zeros are told apart.</summary>
    public static long[] Bits(IEnumerable<double> values) => [.. values.Select(BitConverter.DoubleToInt64Bits)];

    private static Lanes Row(double[][] cases, int row) =>
        new(System.Runtime.Intrinsics.Vector512.Create([.. cases.Select(c => c[row])]));
}
