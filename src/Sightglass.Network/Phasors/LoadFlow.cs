using Sightglass.Network.Compile;

namespace Sightglass.Network.Phasors;

/// <summary>
/// An immutable net of alternating current, wire by wire: unbalanced, radial or looped. Solving it is a pure function of the inputs: the same bits on every machine, nothing allocated.
/// What loads draw besides their admittance is driven in as currents until voltages are at rest; every pass takes one substitution. It finds the upper of the two voltages
/// at which a power can be drawn, or says that there is none. Source: implicit Z-bus method (any text of distribution systems; Kersting, from memory).
/// </summary>
public sealed partial class LoadFlow
{
    private readonly string[] _names;
    private readonly (string Name, double Start)[] _inputs;
    private readonly LineRow[] _lines;
    private readonly LoadRow[] _loads;
    private readonly SourceRow[] _sources;
    private readonly int _frequency;
    private readonly SymmetricPlan _plan;
    private readonly int[] _firstAdmittance;
    private readonly int[] _firstStamp;
    private readonly int[] _stampPlaces;
    private readonly int[] _loadPlaces;
    private readonly bool[] _held;

    internal LoadFlow(string[] names, (string Name, double Start)[] inputs, LineRow[] lines, LoadRow[] loads, SourceRow[] sources, int frequency)
    {
        (_names, _inputs, _lines, _loads, _sources, _frequency) = (names, inputs, lines, loads, sources, frequency);
        _held = new bool[names.Length];
        foreach (SourceRow source in sources)
        {
            _held[source.Terminal] = true;
        }

        _plan = new(names.Length, _held, [.. lines.SelectMany(Pairs), .. loads.Where(l => l.To >= 0).Select(l => (l.From, l.To))]);
        _firstAdmittance = Sums(lines.Select(l => l.From.Length * l.From.Length));
        _firstStamp = Sums(lines.Select(l => 4 * l.From.Length * l.From.Length));
        _stampPlaces = [.. lines.SelectMany(l => Pairs(l).Select(p => _plan.PlaceOf(p.A, p.B)))];
        _loadPlaces = [.. loads.Select(l => l.To < 0 ? -1 : _plan.PlaceOf(l.From, l.To))];
    }

    public int Terminals => _names.Length;

    public int Lines => _lines.Length;

    public int Loads => _loads.Length;

    public int Inputs => _inputs.Length;

    internal int AdmittancePlaces => _firstAdmittance[^1];

    public FlowState NewState() => new(this, _plan.Places);

    /// <summary>The inputs' values at the start.</summary>
    public double[] NewInputs() => [.. _inputs.Select(i => i.Start)];

    /// <summary>What is wrong with the flow as it was solved last, in the order of the kinds, then of names as they were added.</summary>
    public IReadOnlyList<FlowFinding> FindingsOf(FlowState state)
    {
        List<FlowFinding> found = [];
        if (!state.Live.Contains(true))
        {
            found.Add(new(FlowFindingKind.NoSource, ""));
        }

        if (state.Outcome != FlowOutcome.Settled)
        {
            found.Add(new(state.Outcome == FlowOutcome.Collapsed ? FlowFindingKind.Collapse : FlowFindingKind.NotSettled, state.Worst < 0 ? "" : _loads[state.Worst].Name));
        }

        found.AddRange(Enumerable.Range(0, Loads).Where(l => state.Powers[l] != default && !IsLive(l, state)).Select(l => new FlowFinding(FlowFindingKind.Dead, _loads[l].Name)));
        found.AddRange(Enumerable.Range(0, Loads).Where(l => state.Powers[l] != default && state.Below[l]).Select(l => new FlowFinding(FlowFindingKind.BelowFloor, _loads[l].Name)));
        found.AddRange(Enumerable.Range(0, Loads).Where(l => state.Powers[l] != default && _loads[l].Kind != LoadKind.Impedance && state.Hanging[l] && IsLive(l, state)).Select(l => new FlowFinding(FlowFindingKind.Loose, _loads[l].Name)));
        found.AddRange(_sources.Where(s => HeldAt(s, state) != state.Volts[s.Terminal]).Select(s => new FlowFinding(FlowFindingKind.Contradiction, _names[s.Terminal])).Distinct());
        found.AddRange(Enumerable.Range(0, Inputs).Where(i => state.BadInputs[i]).Select(i => new FlowFinding(FlowFindingKind.NotFinite, _inputs[i].Name)));
        return found;
    }

    internal Phasor AcrossLoad(int load, FlowState state) => state.Volts[_loads[load].From] - (_loads[load].To < 0 ? default : state.Volts[_loads[load].To]);

    internal Phasor CurrentOf(int line, int wire, FlowState state)
    {
        LineRow row = _lines[line];
        int n = row.From.Length;
        Phasor sum = default;
        for (int w = 0; w < n; w++)
        {
            Phasor drop = ((1 / row.Ratio) * state.Volts[row.From[w]]) - state.Volts[row.To[w]];
            sum += state.Admittances[_firstAdmittance[line] + (wire * n) + w] * drop;
        }

        return sum;
    }

    private static Phasor HeldAt(SourceRow source, FlowState state) => source.Volts < 0 ? default : state.Given[source.Volts] * source.Direction;

    /// <summary>The terminals between which a line's admittances stand, for each of its pairs of wires: both at the first end, both at the second, and crosswise.</summary>
    private static IEnumerable<(int A, int B)> Pairs(LineRow l) =>
        from a in Enumerable.Range(0, l.From.Length)
        from b in Enumerable.Range(0, l.From.Length)
        from pair in new[] { (l.From[a], l.From[b]), (l.To[a], l.To[b]), (l.From[a], l.To[b]), (l.To[a], l.From[b]) }
        select pair;

    /// <summary>Where each of several runs begins in a row of all; one more behind the last.</summary>
    private static int[] Sums(IEnumerable<int> counts)
    {
        List<int> sums = [0];
        foreach (int count in counts)
        {
            sums.Add(sums[^1] + count);
        }

        return [.. sums];
    }

    private bool IsLive(int load, FlowState state) => state.Live[_loads[load].From] || (_loads[load].To >= 0 && state.Live[_loads[load].To]);
}
