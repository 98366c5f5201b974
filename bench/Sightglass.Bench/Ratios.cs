using System.Globalization;

namespace Sightglass.Bench;

/// <summary>Ratios of interleaved pairs: what the machine does meanwhile falls on both.</summary>
internal sealed class Ratios
{
    private readonly List<double> _values = [];

    public void Add(double ours, double theirs) => _values.Add(ours / theirs);

    public double Median => Sorted()[_values.Count / 2];

    public override string ToString()
    {
        double[] sorted = Sorted();
        return string.Create(CultureInfo.InvariantCulture, $"{Median:0.0000} ({sorted[0]:0.0000}…{sorted[^1]:0.0000})");
    }

    private double[] Sorted() => [.. _values.Order()];
}
