using Sightglass.Network.Laws;
using Sightglass.Network.Stores;

namespace Sightglass.Network.Tests.Probes;

/// <summary>
/// A few stores and paths, integrated by an explicit method written for the tests (Dormand–Prince 5(4)), so that laws and stores are checked against
/// closed forms without the kernel.
/// </summary>
public sealed class SmallNetwork
{
    private readonly List<Func<double[], double[]>> _stores = [];
    private readonly List<int> _first = [];
    private readonly List<Action<double[][], double[]>> _paths = [];
    private double[] _amounts = [];

    public double RelativeTolerance { get; init; } = 1e-10;

    /// <summary>Seconds since the start.</summary>
    public double Time { get; private set; }

    /// <summary>Steps that were taken.</summary>
    public int Steps { get; private set; }

    /// <returns>The number of the store.</returns>
    public int Add<TStore>(double[] parameters, params double[] amounts)
        where TStore : IStore
    {
        int first = _amounts.Length;
        _first.Add(first);
        _amounts = [.. _amounts, .. amounts];
        _stores.Add(all => StoreProbe.Evaluate<TStore>(all[first..(first + amounts.Length)], parameters).Potentials);
        return _stores.Count - 1;
    }

    /// <summary>A path that sees the given potentials (store, which of its potentials) and moves its flows from the first to the last of the stores named.</summary>
    public void Join<TLaw>(double[] parameters, double[] inputs, int from, int to, params (int Store, int Potential)[] seen)
        where TLaw : ILaw =>
        _paths.Add((potentials, rates) =>
        {
            double[] flows = LawProbe.Evaluate<TLaw>([.. seen.Select(s => potentials[s.Store][s.Potential])], parameters, inputs).Flows;
            for (int f = 0; f < flows.Length; f++)
            {
                rates[Row(from, f)] -= flows[f];
                rates[Row(to, f)] += flows[f];
            }
        });

    /// <summary>A path between two stores with one potential each.</summary>
    public void Join<TLaw>(double[] parameters, double[] inputs, int from, int to)
        where TLaw : ILaw =>
        Join<TLaw>(parameters, inputs, from, to, (from, 0), (to, 0));

    public double Amount(int store, int which = 0) => _amounts[_first[store] + which];

    public double Potential(int store, int which = 0) => _stores[store](_amounts)[which];

    /// <summary>Runs to a time, s.</summary>
    public void RunTo(double time) => Run(time, null);

    /// <summary>Runs until a function of the network falls through zero: the time it did, s.</summary>
    public double RunUntil(Func<double> margin, double atMost)
    {
        Run(atMost, margin);
        return Time;
    }

    private void Run(double end, Func<double>? margin)
    {
        double step = Math.Min(1e-6, end - Time);
        while (Time < end)
        {
            step = Math.Min(step, end - Time);
            (double[] next, double error) = DormandPrince.Step(Rates, _amounts, step, RelativeTolerance);
            if (error > 1)
            {
                step *= Math.Max(0.2, 0.9 * Math.Pow(error, -0.2));
                continue;
            }

            double[] before = _amounts;
            _amounts = next;
            if (margin is not null && margin() <= 0)
            {
                _amounts = before;
                Land(margin, step);
                return;
            }

            Time += step;
            Steps++;
            step *= Math.Clamp(0.9 * Math.Pow(Math.Max(error, 1e-10), -0.2), 0.2, 5);
        }

        Assert.True(margin is null, $"not reached by {end} s: {margin?.Invoke():R}");
    }

    /// <summary>Halves a step until it ends where the margin does.</summary>
    private void Land(Func<double> margin, double step)
    {
        double[] start = _amounts;
        double low = 0, high = step;
        for (int i = 0; i < 60; i++)
        {
            double middle = (low + high) / 2;
            _amounts = DormandPrince.Step(Rates, start, middle, RelativeTolerance).Next;
            (low, high) = margin() > 0 ? (middle, high) : (low, middle);
        }

        Time += high;
    }

    private int Row(int store, int flow) => Math.Min(_first[store] + flow, LastRow(store));

    private int LastRow(int store) => (store + 1 < _first.Count ? _first[store + 1] : _amounts.Length) - 1;

    private double[] Rates(double[] amounts)
    {
        double[] rates = new double[amounts.Length];
        double[][] potentials = [.. _stores.Select(s => s(amounts))];
        foreach (Action<double[][], double[]> path in _paths) path(potentials, rates);
        return rates;
    }
}
