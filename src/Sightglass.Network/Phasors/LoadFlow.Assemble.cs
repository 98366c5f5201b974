namespace Sightglass.Network.Phasors;

/// <summary>Inputs, what is live, and the matrix of admittances.</summary>
public sealed partial class LoadFlow
{
    private void Read(ReadOnlySpan<double> inputs, FlowState state)
    {
        for (int i = 0; i < inputs.Length; i++)
        {
            state.BadInputs[i] = !double.IsFinite(inputs[i]);
            state.Given[i] = state.BadInputs[i] ? 0 : inputs[i];
        }

        for (int l = 0; l < _loads.Length; l++)
        {
            state.Powers[l] = new(state.Given[_loads[l].Active], _loads[l].Reactive < 0 ? 0 : state.Given[_loads[l].Reactive]);
        }

        Array.Clear(state.Volts);
        for (int s = _sources.Length - 1; s >= 0; s--)
        {
            state.Volts[_sources[s].Terminal] = HeldAt(_sources[s], state);
        }
    }

    /// <summary>What closed wires join to a terminal that is held is worked out, and is live if that has a voltage: the rest is left out, and is at 0 V.</summary>
    private void FindLive(FlowState state)
    {
        int[] parents = state.Parents;
        for (int t = 0; t < parents.Length; t++)
        {
            parents[t] = t;
        }

        foreach (LineRow line in _lines)
        {
            for (int w = 0; w < line.From.Length; w++)
            {
                if (IsClosed(line, w, state))
                {
                    parents[RootOf(parents, line.From[w])] = RootOf(parents, line.To[w]);
                }
            }
        }

        Array.Clear(state.Joined);
        Array.Clear(state.Live);
        foreach (SourceRow source in _sources)
        {
            int root = RootOf(parents, source.Terminal);
            state.Joined[root] = true;
            state.Live[root] |= state.Volts[source.Terminal] != default;
        }

        for (int l = 0; l < _loads.Length; l++)
        {
            state.Hanging[l] = _loads[l].To >= 0 && !(state.Joined[RootOf(parents, _loads[l].From)] && state.Joined[RootOf(parents, _loads[l].To)]);
        }

        // A neutral that hangs on its loads alone is joined by those that draw.
        for (int l = 0; l < _loads.Length; l++)
        {
            ref readonly LoadRow load = ref _loads[l];
            if (load.To >= 0 && state.Powers[l] != default)
            {
                int from = RootOf(parents, load.From), to = RootOf(parents, load.To);
                state.Joined[to] |= state.Joined[from];
                state.Live[to] |= state.Live[from];
                parents[from] = to;
            }
        }

        for (int t = 0; t < parents.Length; t++)
        {
            int root = RootOf(parents, t);
            state.Joined[t] = state.Joined[root];
            state.Live[t] = state.Live[root];
        }
    }

    private void Assemble(FlowState state)
    {
        Array.Clear(state.Shares);
        Array.Clear(state.Diagonals);
        Array.Clear(state.Admittances);
        double frequency = _frequency < 0 ? 1 : state.Given[_frequency];
        for (int l = 0; l < _lines.Length; l++)
        {
            FindAdmittances(l, frequency, state);
            Stamp(l, state);
        }

        for (int l = 0; l < _loads.Length; l++)
        {
            ref readonly LoadRow load = ref _loads[l];
            state.Stamps[l] = StampOf(l, state);
            Add(load.From, state.Stamps[l], state);
            if (load.To >= 0)
            {
                Add(load.To, state.Stamps[l], state);
                AddBetween(_loadPlaces[l], -state.Stamps[l], state);
            }
        }

        for (int t = 0; t < Terminals; t++)
        {
            // What nothing holds stands alone.
            ref Phasor diagonal = ref state.Diagonals[_plan.PositionOf(t)];
            diagonal = state.Joined[t] && diagonal != default ? diagonal : Phasor.One;
        }
    }

    /// <summary>
    /// Admittance by which a load stands in the matrix: all of one that is an impedance or counts as one; none of one that keeps its power or current, since passes come to rest best without.
    /// </summary>
    private Phasor StampOf(int l, FlowState state)
    {
        ref readonly LoadRow load = ref _loads[l];
        if (!IsLive(l, state))
        {
            return default;
        }

        if (state.Below[l])
        {
            double volts = load.Volts * (load.Kind == LoadKind.Power ? load.Floor * load.Floor : load.Floor);
            return (1 / (load.Volts * volts)) * state.Powers[l].Conjugate;
        }

        return IsImpedance(l, state) ? (1 / (load.Volts * load.Volts)) * state.Powers[l].Conjugate : default;
    }

    private bool IsImpedance(int l, FlowState state) => _loads[l].Kind == LoadKind.Impedance || state.Below[l] || state.Hanging[l];

    /// <summary>A line's admittances: the inverse of its impedances without the wires that are open, whose current is 0.</summary>
    private void FindAdmittances(int l, double frequency, FlowState state)
    {
        LineRow line = _lines[l];
        int n = line.From.Length;
        double heat = line.Heat < 0 ? 1 : state.Given[line.Heat];
        Span<int> whole = stackalloc int[LoadFlowBuilder.MostWires];
        int closed = 0;
        for (int w = 0; w < n; w++)
        {
            whole[closed] = w;
            closed += IsClosed(line, w, state) && state.Joined[line.From[w]] ? 1 : 0;
        }

        Span<Phasor> z = stackalloc Phasor[LoadFlowBuilder.MostWires * LoadFlowBuilder.MostWires];
        for (int i = 0; i < closed; i++)
        {
            for (int j = 0; j < closed; j++)
            {
                Phasor told = line.Impedance[(whole[i] * n) + whole[j]];
                z[(i * closed) + j] = new(i == j ? told.Re * heat : told.Re, told.Im * frequency);
            }
        }

        if (!SmallMatrix.Invert(z, closed))
        {
            return;
        }

        for (int i = 0; i < closed; i++)
        {
            for (int j = 0; j < closed; j++)
            {
                state.Admittances[_firstAdmittance[l] + (whole[i] * n) + whole[j]] = z[(i * closed) + j];
            }
        }
    }

    /// <summary>I₂ = Y·(V₁/r − V₂), I₁ = I₂/r.</summary>
    private void Stamp(int l, FlowState state)
    {
        LineRow line = _lines[l];
        int n = line.From.Length;
        double perRatio = 1 / line.Ratio;
        ReadOnlySpan<int> places = _stampPlaces.AsSpan(_firstStamp[l]);
        for (int i = 0; i < n * n; i++)
        {
            Phasor y = state.Admittances[_firstAdmittance[l] + i];
            (int a, int b) = (i / n, i % n);
            if (a == b)
            {
                Add(line.From[a], perRatio * perRatio * y, state);
                Add(line.To[a], y, state);
                AddBetween(places[(4 * i) + 2], -(perRatio * y), state);
            }
            else if (a < b)
            {
                // The matrix is the same both ways: each pair once.
                AddBetween(places[4 * i], perRatio * perRatio * y, state);
                AddBetween(places[(4 * i) + 1], y, state);
                AddBetween(places[(4 * i) + 2], -(perRatio * y), state);
                AddBetween(places[(4 * i) + 3], -(perRatio * y), state);
            }
        }
    }

    private void Add(int terminal, Phasor y, FlowState state) => state.Diagonals[_plan.PositionOf(terminal)] += y;

    private static void AddBetween(int place, Phasor y, FlowState state)
    {
        if (place >= 0)
        {
            state.Shares[place] += y;
        }
    }

    private static bool IsClosed(LineRow line, int wire, FlowState state) => line.Closed[wire] < 0 || state.Given[line.Closed[wire]] > 0;

    private static int RootOf(int[] parents, int t)
    {
        while (parents[t] != t)
        {
            parents[t] = parents[parents[t]];
            t = parents[t];
        }

        return t;
    }
}
