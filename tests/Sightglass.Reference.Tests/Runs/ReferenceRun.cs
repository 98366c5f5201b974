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
    private readonly SimTime[] _events;

    public ReferenceRun(ReferenceNetwork network, double relativeTolerance)
    {
        _network = network;
        _group = new(network.Topology, relativeTolerance);
        _lanes = [.. Enumerable.Range(0, Basics.Numbers.Lanes.Count).Select(i => new LaneProgress(i))];
        _rises = [.. File.Switches.Select(s => _group.AddGuard(new PotentialGuard(network.Nodes[s.Node], s.High, 1)))];
        _falls = [.. File.Switches.Select(s => _group.AddGuard(new PotentialGuard(network.Nodes[s.Node], s.Low, -1)))];
        _events = [.. File.Schedule.Select(s => SimTime.FromSeconds(s.Time)), SimTime.FromSeconds(File.End)];
    }

    public LaneGroup Group => _group;

    private NetFile File => _network.File;

    /// <summary>Runs so many scenarios from start to end, without samples; a lane that is done takes the next one.</summary>
    /// <param name="scenarios">How many.</param>
    /// <param name="prepare">Called with lane and scenario when the lane has been loaded.</param>
    public void Run(int scenarios, Action<int, int>? prepare = null) => Run(scenarios, 0, prepare);

    /// <summary>Runs one scenario from start to end and gives the potentials at every sampling moment.</summary>
    public ImmutableArray<ImmutableArray<double>> Sample()
    {
        Run(1, File.Every, null);
        return [.. _lanes[0].Samples];
    }

    /// <summary>Iterations of the group so far.</summary>
    public long Iterations { get; private set; }

    /// <summary>When switches fired in the last scenario of lane 0, s.</summary>
    public IReadOnlyList<double> Firings => _lanes[0].Firings;

    public void Dispose() => _group.Dispose();

    private void Run(int scenarios, double every, Action<int, int>? prepare)
    {
        int next = 0;
        int running = 0;
        while (next < scenarios || running > 0)
        {
            running = 0;
            foreach (LaneProgress lane in _lanes)
            {
                if (lane.IsDone && next < scenarios)
                {
                    Load(lane, next++, every, prepare);
                }

                if (!lane.IsDone)
                {
                    Continue(lane);
                    running += lane.IsDone ? 0 : 1;
                }
            }

            if (running > 0)
            {
                _group.Iterate();
                Iterations++;
            }
        }
    }

    private void Load(LaneProgress lane, int scenario, double every, Action<int, int>? prepare)
    {
        _group.Load(lane.Number);
        prepare?.Invoke(lane.Number, scenario);
        lane.Start(SimTime.FromSeconds(every));
        SetSwitches(lane.Number);
    }

    /// <summary>Takes in what the lane has got and asks for the next thing.</summary>
    private void Continue(LaneProgress lane)
    {
        if (_group.Task(lane.Number) != LaneTask.None)
        {
            return;
        }

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
        SimTime next = _events[lane.NextEvent];
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
            _group.Commit(i);
            Fire(lane);
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

    private void Fire(LaneProgress lane)
    {
        for (int k = 0; k < File.Switches.Length && _group.HasFired(lane.Number); k++)
        {
            bool fell = _group.HasFired(lane.Number, _falls[k]);
            if (fell || _group.HasFired(lane.Number, _rises[k]))
            {
                Turn(lane.Number, k, fell);
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
