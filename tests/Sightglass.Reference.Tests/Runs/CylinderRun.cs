using System.Collections.Immutable;
using Sightglass.Basics.Time;
using Sightglass.Network.Compile;
using Sightglass.Network.Groups;
using Sightglass.Network.Stores;
using Sightglass.Reference.Tests.Laws;
using Sightglass.Reference.Tests.Networks;

namespace Sightglass.Reference.Tests.Runs;

/// <summary>
/// A cylinder problem on the kernel, with the kernel's own lying tank: amounts in m³, potentials in m of head (a liquid of 1 kg/m³ and 1 Pa/m
/// above the floor's height).
/// </summary>
public sealed class CylinderRun : IDisposable
{
    private readonly CylinderFile _file;
    private readonly ImmutableArray<Amount> _tanks;
    private readonly ImmutableArray<Input> _inflows;
    private readonly Amount _well;
    private readonly ImmutableArray<Amount> _drains;
    private readonly LaneGroup _group;

    public CylinderRun(CylinderFile file, double relativeTolerance)
    {
        _file = file;
        NetworkBuilder builder = new();
        _tanks = [.. file.Tanks.Select((t, i) => builder.AddStore<LyingRoundTank>($"tank {i}", Sheet(t), [VolumeOf(t)], [2 * t.RadiusM]).First)];
        _well = builder.AddBoundary<OutsideStore>("well", [0]).First;
        ImmutableArray<Amount>.Builder drains = ImmutableArray.CreateBuilder<Amount>();
        foreach (CylinderOrificeRow o in file.Orifices)
        {
            Amount to = o.B >= 0 ? _tanks[o.B] : builder.AddBoundary<OutsideStore>("drain", [o.Z]).First;
            if (o.B < 0)
            {
                drains.Add(to);
            }

            double k = o.CdaM2 * Math.Sqrt(2 * 9.80665);
            builder.AddPath<HeadLaw>("orifice", [_tanks[o.A], to], [new(_tanks[o.A], to)], [k, file.EpsM, 0], [builder.AddInput(1)]);
        }

        _inflows = [.. file.Inflow.Select(_ => builder.AddInput(0))];
        for (int i = 0; i < _inflows.Length; i++)
        {
            Amount to = _tanks[file.Inflow[i].Tank];
            builder.AddPath<SourceLaw>("inflow", [_well, to], [new(_well, to)], [], [_inflows[i]]);
        }

        _drains = drains.ToImmutable();
        _group = new(builder.Build(), relativeTolerance);
    }

    /// <summary>All that is held, and all that has come and gone, m³: constant.</summary>
    public double Sum => _tanks.Concat(_drains).Append(_well).Sum(a => _group.GetAmount(0, a));

    /// <summary>Volumes, then levels above the floors, at every sampling moment.</summary>
    public ImmutableArray<ImmutableArray<double>> Sample()
    {
        ImmutableArray<ImmutableArray<double>>.Builder rows = ImmutableArray.CreateBuilder<ImmutableArray<double>>();
        for (double t = 0; t <= _file.EndS; t += _file.EveryS)
        {
            RunTo(t);
            SetInflows(t);
            rows.Add(Row());
        }

        return rows.ToImmutable();
    }

    public void Dispose() => _group.Dispose();

    private void RunTo(double seconds)
    {
        SimTime end = SimTime.FromSeconds(seconds);
        while (_group.Time(0) < end)
        {
            _group.Propose(0);
            Finish();
            if (_group.PendingEnd(0) > end)
            {
                _group.Cut(0, end);
                Finish();
            }
            else
            {
                _group.Commit(0);
            }
        }
    }

    private void Finish()
    {
        while (_group.Task(0) != LaneTask.None)
        {
            _group.Iterate();
        }

        if (_group.HasFailed(0))
        {
            throw new InvalidOperationException($"It cannot go on from {_group.Time(0)}.");
        }
    }

    private void SetInflows(double t)
    {
        for (int i = 0; i < _inflows.Length; i++)
        {
            InflowRow row = _file.Inflow[i];
            double flow = t >= row.FromS && t < row.ToS ? row.M3PerS : 0;
            if (_group.GetInput(0, _inflows[i]) != flow)
            {
                _group.SetInput(0, _inflows[i], flow);
            }
        }
    }

    private ImmutableArray<double> Row()
    {
        _group.Peek(0, _group.Time(0));
        Finish();
        StateView state = _group.End;
        ImmutableArray<double>.Builder row = ImmutableArray.CreateBuilder<double>();
        foreach (Amount tank in _tanks)
        {
            row.Add(state.AmountOf(tank)[0]);
        }

        for (int i = 0; i < _tanks.Length; i++)
        {
            row.Add(state.PotentialOf(_tanks[i])[0] - _file.Tanks[i].FloorZ);
        }

        return row.ToImmutable();
    }

    private static double[] Sheet(CylinderRow t)
    {
        double[] sheet = LyingRoundTank.ParametersOf(t.RadiusM, t.LengthM, density: 1);
        (sheet[1], sheet[2]) = (1, t.FloorZ);
        return sheet;
    }

    /// <summary>Perry's / Marks' handbook, from memory: V = L[R²·acos((R−h)/R) − (R−h)√(2Rh−h²)].</summary>
    private static double VolumeOf(CylinderRow t)
    {
        (double r, double h) = (t.RadiusM, t.StartLevelM);
        return t.LengthM * ((r * r * Math.Acos((r - h) / r)) - ((r - h) * Math.Sqrt((2 * r * h) - (h * h))));
    }
}
