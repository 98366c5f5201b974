using System.Collections.Immutable;
using Sightglass.Basics.Time;
using Sightglass.Network.Groups;
using Sightglass.Reference.Tests.Networks;

namespace Sightglass.Reference.Tests.Runs;

/// <summary>Runs a reference problem with its switches and schedule in every lane of a group, each lane in its own time.</summary>
public sealed class ReferenceRun : IDisposable
{
    private readonly ReferenceNetwork _network;
    private readonly LaneGroup _group;
    private readonly LaneProgress[] _lanes;
    private readonly int[] _rises;
    private readonly int[] _falls;

    public ReferenceRun(ReferenceNetwork network, double relativeTolerance)
    {
        _network = network;
        _group = new(network.Topology, relativeTolerance);
        _lanes = [.. Enumerable.Range(0, Basics.Numbers.Lanes.Count).Select(i => new LaneProgress(i))];
        _rises = [.. File.Switches.Select(s => _group.AddGuard(new PotentialGuard(network.Nodes[s.Node], s.High, 1)))];
        _falls = [.. File.Switches.Select(s => _group.AddGuard(new PotentialGuard(network.Nodes[s.Node], s.Low, -1)))];
    }

    public LaneGroup Group => _group;

    private NetFile File => _network.File;

    /// <summary>Runs the first so many lanes from the start to the end, without samples.</summary>
    /// <param name="prepare">Called for each lane after it was loaded.</param>
    public void Run(int lanes, Action<LaneGroup, int>? prepare = null) => Run(lanes, 0, prepare);

    /// <summary>Runs lane 0 from the start to the end and gives the potentials at every sampling moment.</summary>
    public ImmutableArray<ImmutableArray<double>> Sample()
    {
        Run(1, File.Every, null);
        return [.. _lanes[0].Samples];
    }

    public void Dispose() => _group.Dispose();

    private void Run(int lanes, double every, Action<LaneGroup, int>? prepare)
    {
        for (int lane = 0; lane < lanes; lane++)
        {
            _group.Load(lane);
            prepare?.Invoke(_group, lane);
            _lanes[lane].Start(SimTime.FromSeconds(every));
            SetSwitches(lane);
            Continue(_lanes[lane]);
        }

        while (_group.Iterate() > 0 || ContinueAll(lanes))
        {
            ContinueAll(lanes);
        }
    }

    private bool ContinueAll(int lanes)
    {
        bool any = false;
        for (int lane = 0; lane < lanes; lane++)
        {
            if (_group.Task(lane) == LaneTask.None && !_lanes[lane].IsDone)
            {
                Continue(_lanes[lane]);
                any |= !_lanes[lane].IsDone;
            }
        }

        return any;
    }

    /// <summary>Takes in what the lane has got and asks for the next thing.</summary>
    private void Continue(LaneProgress lane)
    {
        if (_group.HasFailed(lane.Number))
        {
            throw new InvalidOperationException($"Lane {lane.Number} cannot go on from {_group.Time(lane.Number)}.");
        }

        if (lane.IsPeeking)
        {
            TakeSample(lane);
        }

        while (_group.Task(lane.Number) == LaneTask.None && !lane.IsDone)
        {
            Ask(lane);
        }
    }

    private void Ask(LaneProgress lane)
    {
        int i = lane.Number;
        SimTime pending = _group.PendingEnd(i);
        SimTime now = _group.Time(i);
        SimTime next = lane.NextEvent < File.Schedule.Length ? SimTime.FromSeconds(File.Schedule[lane.NextEvent].Time) : SimTime.FromSeconds(File.End);
        if (pending == SimTime.Never && now == next)
        {
            Happen(lane);
        }
        else if (pending == SimTime.Never)
        {
            _group.Propose(i);
        }
        else if (lane.NextSample <= SimTime.Min(pending, next))
        {
            lane.IsPeeking = true;
            _group.Peek(i, lane.NextSample);
        }
        else if (next < pending)
        {
            _group.Cut(i, next);
        }
        else
        {
            ulong fired = _group.Fired(i);
            _group.Commit(i);
            Fire(lane, fired);
        }
    }

    private void TakeSample(LaneProgress lane)
    {
        StateView state = _group.End;
        ImmutableArray<double>.Builder row = ImmutableArray.CreateBuilder<double>(_network.Nodes.Length);
        foreach (var node in _network.Nodes)
        {
            row.Add(state.PotentialOf(node)[lane.Number]);
        }

        lane.Take(row.MoveToImmutable());
    }

    private void Happen(LaneProgress lane)
    {
        if (lane.NextEvent == File.Schedule.Length)
        {
            lane.IsDone = true;
            return;
        }

        ScheduleRow row = File.Schedule[lane.NextEvent++];
        _group.SetInput(lane.Number, _network.InputOf(row.Kind, row.Index), row.Value);
    }

    private void SetSwitches(int lane)
    {
        for (int k = 0; k < File.Switches.Length; k++)
        {
            SwitchRow s = File.Switches[k];
            double start = _group.GetAmount(lane, _network.Nodes[s.Node]) / _network.CapacityOf(s.Node);
            Turn(lane, k, start < s.Low || (start <= s.High && s.IsOn));
        }
    }

    private void Fire(LaneProgress lane, ulong fired)
    {
        for (int k = 0; fired != 0 && k < File.Switches.Length; k++)
        {
            if ((fired >> _rises[k] & 1) != 0 || (fired >> _falls[k] & 1) != 0)
            {
                Turn(lane.Number, k, (fired >> _falls[k] & 1) != 0);
                lane.Firings.Add(_group.Time(lane.Number).Seconds);
            }
        }
    }

    private void Turn(int lane, int k, bool on)
    {
        SwitchRow s = File.Switches[k];
        _group.SetInput(lane, _network.InputOf(s.Kind, s.Index), on ? s.WhenOn : s.WhenOff);
        _group.Arm(lane, _rises[k], on);
        _group.Arm(lane, _falls[k], !on);
    }
}
