using Sightglass.Network.Compile;

namespace Sightglass.Network.Circuits;

/// <summary>
/// An immutable circuit of direct current: nodes, conductances, sources, diodes, coils and their contacts. Solving it is a pure function of the inputs and of the coils that were
/// up before: the same bits on every machine, nothing allocated. Source: nodal analysis (any text of circuit theory).
/// </summary>
public sealed partial class Circuit
{
    /// <summary>A coil that moved this often when one moved at a time is one of those that never come to rest.</summary>
    internal const int Restless = 3;

    private readonly string[] _names;
    private readonly (string Name, double Start)[] _inputs;
    private readonly BranchRow[] _rows;
    private readonly HoldRow[] _holds;
    private readonly CoilRow[] _coils;
    private readonly DiodeRow[] _diodes;
    private readonly SymmetricPlan _plan;
    private readonly int[] _places;

    internal Circuit(string[] names, (string Name, double Start)[] inputs, BranchRow[] rows, HoldRow[] holds, CoilRow[] coils, DiodeRow[] diodes)
    {
        (_names, _inputs, _rows, _holds, _coils, _diodes) = (names, inputs, rows, holds, coils, diodes);
        bool[] held = new bool[names.Length];
        foreach (HoldRow hold in holds)
        {
            held[hold.Node] = true;
        }

        _plan = new(names.Length, held, rows.Select(r => (r.A, r.B)));
        _places = [.. rows.Select(r => _plan.PlaceOf(r.A, r.B))];
    }

    public int Nodes => _names.Length;

    public int Branches => _rows.Length;

    public int Coils => _coils.Length;

    public int Inputs => _inputs.Length;

    internal int Diodes => _diodes.Length;

    /// <summary>A state with every coil down, not yet solved.</summary>
    public CircuitState NewState() => new(this, _plan.Places);

    /// <summary>The inputs' values at the start.</summary>
    public double[] NewInputs() => [.. _inputs.Select(i => i.Start)];

    internal int PositionOf(int node) => _plan.PositionOf(node);

    /// <summary>Solves for inputs and for the coils that are up in <paramref name="state"/>, which takes the result.</summary>
    /// <param name="inputs">One value each, in the order in which they were added: openings 0 or more (below counts as 0), volts.</param>
    /// <param name="state">Of this circuit.</param>
    /// <exception cref="ArgumentException">The inputs or the state are another circuit's.</exception>
    public void Solve(ReadOnlySpan<double> inputs, CircuitState state)
    {
        if (inputs.Length != _inputs.Length || state.Circuit != this)
        {
            throw new ArgumentException(FormattableString.Invariant($"The circuit has {_inputs.Length} inputs and a state of its own, not {inputs.Length} inputs or another's state."));
        }

        Read(inputs, state);
        Settle(state);
    }

    /// <summary>What is wrong with the circuit as it was solved last, in the order of the kinds, then of names as they were added.</summary>
    public IReadOnlyList<CircuitFinding> FindingsOf(CircuitState state)
    {
        List<CircuitFinding> found = [];
        if (!state.AnySource)
        {
            found.Add(new(CircuitFindingKind.NoSource, ""));
        }

        int[] floating = [.. Enumerable.Range(0, _rows.Length).Where(b => state.Forces[b] != 0 && state.Conductances[b] > 0 && _rows[b].Emf >= 0).Select(b => state.Roots[_plan.PositionOf(_rows[b].A)])];
        found.AddRange(Enumerable.Range(0, Nodes).Where(n => floating.Contains(_plan.PositionOf(n))).Select(n => new CircuitFinding(CircuitFindingKind.Floating, _names[n])));
        found.AddRange(_holds.Where(h => HeldAt(h, state) != state.Volts[h.Node]).Select(h => new CircuitFinding(CircuitFindingKind.Contradiction, _names[h.Node])).Distinct());
        found.AddRange(Enumerable.Range(0, Inputs).Where(i => state.BadInputs[i]).Select(i => new CircuitFinding(CircuitFindingKind.NotFinite, _inputs[i].Name)));
        bool race = state.Outcome == CircuitOutcome.Race;
        CircuitFindingKind kind = race ? CircuitFindingKind.Race : CircuitFindingKind.Chatter;
        found.AddRange(Enumerable.Range(0, Coils).Where(c => race ? state.Together[c] : state.Outcome == CircuitOutcome.Chatter && state.Moves[c] >= Restless).Select(c => new CircuitFinding(kind, _coils[c].Name)));
        if (state.RestlessDiode)
        {
            found.Add(new(CircuitFindingKind.Chatter, _rows[_diodes[0].Branch].Name));
        }

        return found;
    }

    private static double HeldAt(HoldRow hold, CircuitState state) => hold.Input < 0 ? 0 : state.Given[hold.Input];

    private void Read(ReadOnlySpan<double> inputs, CircuitState state)
    {
        Span<double> given = state.Given;
        for (int i = 0; i < inputs.Length; i++)
        {
            state.BadInputs[i] = !double.IsFinite(inputs[i]);
            given[i] = state.BadInputs[i] ? 0 : inputs[i];
        }

        state.AnySource = false;
        for (int b = 0; b < _rows.Length; b++)
        {
            ref readonly BranchRow row = ref _rows[b];
            state.Openings[b] = row.Opening < 0 ? 1 : given[row.Opening] > 0 ? given[row.Opening] : 0;
            state.Forces[b] = row.Emf < 0 ? 0 : given[row.Emf];
            state.AnySource |= state.Forces[b] != 0 && state.Openings[b] > 0;
        }

        for (int h = _holds.Length - 1; h >= 0; h--)
        {
            double volts = HeldAt(_holds[h], state);
            state.Volts[_holds[h].Node] = volts;
            state.AnySource |= volts != 0;
        }
    }
}
