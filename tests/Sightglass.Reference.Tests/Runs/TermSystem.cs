using Sightglass.Basics.Time;
using Sightglass.Network.Compile;
using Sightglass.Network.Groups;
using Sightglass.Reference.Tests.Laws;
using Sightglass.Reference.Tests.Networks;

namespace Sightglass.Reference.Tests.Runs;

/// <summary>Equations y′ = Σ k·yₐ·y_b·y_c as a network: every unknown a store of capacity 1, every term a path.</summary>
public sealed class TermSystem
{
    private readonly NetworkBuilder _builder = new();
    private readonly Amount[] _unknowns;
    private readonly Amount _one;
    private int _terms;

    /// <param name="unknowns">Start and span (the size that errors are judged by) of each.</param>
    public TermSystem(params (double Start, double Span)[] unknowns)
    {
        _unknowns = [.. unknowns.Select((u, i) => _builder.AddStore<LinearStore>($"y{i + 1}", LinearStore.ParametersOf(1), [u.Start], [u.Span]).First)];
        _one = _builder.AddBoundary<OutsideStore>("one", [1]).First;
    }

    /// <summary>Adds k times the product of up to three unknowns (counted from 1) to y_to's equation and takes it from y_from's; 0 is nothing.</summary>
    public TermSystem Term(int from, int to, double k, params int[] factors)
    {
        Amount[] seen = [.. Enumerable.Range(0, 3).Select(i => i < factors.Length ? _unknowns[factors[i] - 1] : _one)];
        _builder.AddPath<TermLaw>($"term {_terms++}", seen, [new(Of(from), Of(to))], [k], []);
        return this;
    }

    /// <summary>The unknowns at moments, ascending, s.</summary>
    public double[][] At(double relativeTolerance, params double[] times)
    {
        using LaneGroup group = new(_builder.Build(), relativeTolerance);
        List<double[]> found = [];
        foreach (double t in times)
        {
            RunTo(group, SimTime.FromSeconds(t));
            found.Add([.. _unknowns.Select(u => group.GetAmount(0, u))]);
        }

        return [.. found];
    }

    private Amount Of(int unknown) => unknown == 0 ? Amount.None : _unknowns[unknown - 1];

    private static void RunTo(LaneGroup group, SimTime end)
    {
        while (group.Time(0) < end)
        {
            group.Propose(0);
            Finish(group);
            if (group.PendingEnd(0) > end)
            {
                group.Cut(0, end);
                Finish(group);
            }
            else
            {
                group.Commit(0);
            }
        }
    }

    private static void Finish(LaneGroup group)
    {
        while (group.Task(0) != LaneTask.None)
        {
            group.Iterate();
        }

        if (group.HasFailed(0))
        {
            throw new InvalidOperationException($"It cannot go on from {group.Time(0)}.");
        }
    }
}
