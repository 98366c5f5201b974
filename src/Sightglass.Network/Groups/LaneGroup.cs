using Sightglass.Basics.Numbers;
using Sightglass.Basics.Time;
using Sightglass.Network.Compile;
using Sightglass.Network.Laws.Common;
using Sightglass.Network.Step;

namespace Sightglass.Network.Groups;

/// <summary>
/// Eight runs of one network side by side. Each lane has its own clock, step and request; what a lane computes is the same
/// bits whatever runs in the others. Ask with <see cref="Propose"/>, <see cref="Cut"/> or
/// <see cref="Peek"/>, then <see cref="Iterate"/> until the lane's task is <see cref="LaneTask.None"/>.
/// </summary>
public sealed unsafe partial class LaneGroup : IDisposable
{
    private const double SecondsPerTick = 1.0 / SimTime.TicksPerSecond;

    private readonly LaneMemory _memory;
    private readonly LaneState[] _lanes = [.. Enumerable.Range(0, Lanes.Count).Select(_ => new LaneState())];
    private readonly Lanes* _parameters;
    private readonly Lanes* _inputs;
    private readonly Lanes* _amounts;
    private readonly Lanes* _pending;
    private readonly Lanes* _after;
    private readonly Lanes* _potentials;
    private readonly Lanes* _capacity;
    private readonly Lanes* _cross;
    private readonly Lanes* _flows;
    private readonly Lanes* _slopes;
    private readonly Lanes* _factors;
    private readonly Lanes* _inversePivots;
    private readonly Lanes* _solution;
    private readonly Lanes* _seconds;
    private readonly Lanes* _nextTicks;
    private readonly Lanes* _share;
    private readonly Lanes* _seen;
    private readonly Lanes* _given;
    private readonly Stages _stages;
    private readonly double[] _inverseTolerance;

    /// <summary>Lanes whose committed amounts still stand among the pending ones, a bit each.</summary>
    private uint _settling;

    /// <param name="topology">What to run.</param>
    /// <param name="relativeTolerance">Error allowed in a step as a share of each store's span; 1e-9…1e-2.</param>
    public LaneGroup(Topology topology, double relativeTolerance = 1e-5)
    {
        ArgumentNullException.ThrowIfNull(topology);
        ArgumentOutOfRangeException.ThrowIfLessThan(relativeTolerance, 1e-12);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(relativeTolerance, 1e-2);
        Topology = topology;
        int n = topology.Amounts;
        int cross = 2 * topology.Pairs.Length;
        const int ForBoundaries = 2;
        _memory = new(
            topology.Parameters + topology.Inputs + (13 * n) + (2 * cross) + ForBoundaries + topology.Flows + topology.Slopes + topology.Plan.Kept + 6 + (2 * Row<Lanes>.Length));
        _parameters = _memory.Take(topology.Parameters);
        _inputs = _memory.Take(topology.Inputs);
        _amounts = _memory.Take(n);
        _pending = _memory.Take(n);
        _after = _memory.Take(n);
        _potentials = _memory.Take(n);
        _capacity = _memory.Take(n);
        _cross = _memory.Take(cross + ForBoundaries);
        _flows = _memory.Take(topology.Flows);
        _slopes = _memory.Take(topology.Slopes + cross);
        _factors = _memory.Take(topology.Plan.Kept);
        _inversePivots = _memory.Take(n);
        _solution = _memory.Take(n);
        _seconds = _memory.Take(1);
        _nextTicks = _memory.Take(1);
        _share = _memory.Take(1);
        _stages = new()
        {
            Before = _amounts,
            After = _after,
            Flows = _memory.Take(n),
            Change1 = _memory.Take(n),
            Carried = _memory.Take(n),
            Change3 = _memory.Take(n),
            Third = _memory.Take(n),
            Fourth = _memory.Take(n),
            Rate = _memory.Take(1),
            Rate21 = _memory.Take(1),
            Rate43 = _memory.Take(1),
        };
        _seen = _memory.Take(Row<Lanes>.Length);
        _given = _memory.Take(Row<Lanes>.Length);
        _inverseTolerance = [.. topology.Spans.Select(s => s > 0 ? 1 / (relativeTolerance * s) : 0)];
        _set.MakeRoom(Math.Max(1, topology.Parameters));
        for (int lane = 0; lane < Lanes.Count; lane++)
        {
            Load(lane);
        }
    }

    public Topology Topology { get; }

    /// <summary>Counts whatever may change what a <see cref="StateView"/> shows: iterations, loads, inputs and parameters set.</summary>
    public long Version { get; private set; }

    /// <summary>Puts a lane back to the topology's start: amounts, parameters, inputs, time zero, all guards off.</summary>
    public void Load(int lane)
    {
        Fill(_parameters, Topology.StartParameters, lane);
        Fill(_inputs, Topology.StartInputs, lane);
        Fill(_amounts, Topology.StartAmounts, lane);
        _settling &= ~(1u << lane);
        _lanes[lane].Reset();
        Disarm(lane);
        Version++;
    }

    /// <summary>The committed amount of a lane.</summary>
    public double GetAmount(int lane, Amount amount) =>
        At((_settling >> lane & 1) != 0 ? _pending : _amounts, Topology.RowOf[amount.Index], lane);

    /// <summary>Sets a committed amount; only before the first step or after a restored snapshot.</summary>
    public void SetAmount(int lane, Amount amount, double value)
    {
        Settle();
        At(_amounts, Topology.RowOf[amount.Index], lane) = value;
        Version++;
    }

    public double GetInput(int lane, Input input) => At(_inputs, input.Index, lane);

    public double GetParameter(int lane, int parameter) => At(_parameters, parameter, lane);

    /// <summary>Changes an input at the committed moment. Drops the pending step: cut first.</summary>
    /// <exception cref="InvalidOperationException">A step is pending.</exception>
    public void SetInput(int lane, Input input, double value)
    {
        RequireNoPending(lane);
        At(_inputs, input.Index, lane) = value;
        Version++;
        _lanes[lane].NextSize = 0;
    }

    /// <summary>Changes a parameter at the committed moment; as <see cref="SetInput"/>.</summary>
    public void SetParameter(int lane, int parameter, double value)
    {
        RequireNoPending(lane);
        At(_parameters, parameter, lane) = value;
        _set[parameter] = true;
        Version++;
        _lanes[lane].NextSize = 0;
    }

    /// <summary>Time of the committed state.</summary>
    public SimTime Time(int lane) => new(_lanes[lane].Committed);

    /// <summary>End of the pending step, or <see cref="SimTime.Never"/>.</summary>
    public SimTime PendingEnd(int lane) => _lanes[lane].HasPending ? new(_lanes[lane].Pending) : SimTime.Never;

    public LaneTask Task(int lane) => _lanes[lane].Task;

    /// <summary>Steps committed or pending since the load, landings and cuts included.</summary>
    public long Steps(int lane) => _lanes[lane].Steps;

    public long Attempts(int lane) => _lanes[lane].Attempts;

    /// <summary>True when even a step of one tick was refused: the lane cannot go on.</summary>
    public bool HasFailed(int lane) => _lanes[lane].Failed;

    /// <summary>Step control to be kept in a snapshot: the size in ticks with which the pending step (or else the next) begins its attempts.</summary>
    public long StepSize(int lane) => _lanes[lane].HasPending ? _lanes[lane].SizeAtProposal : _lanes[lane].NextSize;

    /// <summary>Puts clock and step control of a lane where a snapshot says; amounts, inputs and armed switches stay as they were set.</summary>
    public void Resume(int lane, SimTime time, long stepSize, long steps)
    {
        LaneState s = _lanes[lane];
        s.Reset();
        s.Committed = time.Ticks;
        s.NextSize = stepSize;
        s.Steps = steps;
    }

    public void Dispose()
    {
        _memory.Dispose();
        _guardMemory.Dispose();
    }

    internal Lanes InputLanes(int index) => _inputs[index];

    internal Lanes ParameterLanes(int index) => _parameters[index];

    internal Lanes FlowOf(int path, Lanes* amounts, Lanes* potentials)
    {
        Frame frame = FrameOf(amounts, potentials);
        (int batch, int index) = Topology.PathPlaces[path];
        return Topology.PathBatches[batch].FlowOf(ref frame, index);
    }

    private static ref double At(Lanes* array, int index, int lane) => ref ((double*)(array + index))[lane];

    private static void Fill(Lanes* array, double[] values, int lane)
    {
        for (int i = 0; i < values.Length; i++)
        {
            At(array, i, lane) = values[i];
        }
    }

    private Frame FrameOf(Lanes* amounts, Lanes* potentials) => new()
    {
        K = _parameters,
        U = _inputs,
        M = amounts,
        P = potentials,
        C = _capacity,
        Cross = _cross,
        Q = _flows,
        D = _slopes,
        Seen = _seen,
        Given = _given,
        Stages = _stages,
    };

    private void RequireNoPending(int lane)
    {
        if (_lanes[lane].HasPending)
        {
            throw new InvalidOperationException("Inputs change at the committed moment only: cut the pending step first.");
        }
    }
}
