namespace Sightglass.Network.Phasors;

/// <summary>Voltages brought to rest, with a bound.</summary>
public sealed partial class LoadFlow
{
    /// <summary>Within a hundred-thousandth of the greatest power that can be drawn rest takes about 1,500 passes.</summary>
    private const int MostIterations = 4000;

    /// <summary>Change of a voltage, as a share of the greatest given one, at which it is at rest.</summary>
    private const double AtRest = 1e-13;

    /// <summary>
    /// Passes without a smaller change than all before: below the nose changes shrink, by little close to it; beyond it they shrink until the narrows are passed and grow then, or go round.
    /// </summary>
    private const int Patience = 100;

    /// <summary>Change that is rounding alone, where voltages are as sensitive as close to the nose.</summary>
    private const double Rounding = 1e-10;

    /// <summary>
    /// Share of the voltage that it has without loads at which a load has collapsed: half of it is the least a source behind an impedance can have at its nose, and other loads may have taken as
    /// much again.
    /// </summary>
    private const double Fallen = 0.1;

    /// <summary>Solves for inputs.</summary>
    /// <param name="inputs">One value each, in the order in which they were added.</param>
    /// <param name="state">Of this load flow; takes the result.</param>
    /// <exception cref="ArgumentException">The inputs or the state are another load flow's.</exception>
    public void Solve(ReadOnlySpan<double> inputs, FlowState state)
    {
        if (inputs.Length != _inputs.Length || state.Flow != this)
        {
            throw new ArgumentException(FormattableString.Invariant($"The load flow has {_inputs.Length} inputs and a state of its own, not {inputs.Length} inputs or another's state."));
        }

        Read(inputs, state);
        FindLive(state);
        Array.Clear(state.Below);
        Array.Clear(state.Raised);
        state.Iterations = 0;
        do
        {
            Assemble(state);
            state.Worst = -1;
            state.Outcome = PhasorFactors.Eliminate(_plan, state.Shares, state.Diagonals) ? Iterate(state) : FlowOutcome.NotSettled;
        }
        while (MoveFloors(state));
        if (state.Outcome != FlowOutcome.Settled)
        {
            // What the last pass left is no answer.
            for (int t = 0; t < Terminals; t++)
            {
                state.Volts[t] = _held[t] ? state.Volts[t] : default;
            }

            Array.Clear(state.Admittances);
        }

        Sum(state);
    }

    /// <summary>
    /// Loads with less voltage than they keep their power at become impedances, those that have more again go back, each once: whether one moved. It ends, since a load moves three times at
    /// most.
    /// </summary>
    private bool MoveFloors(FlowState state)
    {
        bool moved = false;
        for (int l = 0; l < Loads; l++)
        {
            ref readonly LoadRow load = ref _loads[l];
            if (IsStarved(l, state))
            {
                state.Below[l] = moved = true;
            }
            else if (state.Below[l] && !state.Raised[l] && state.Outcome == FlowOutcome.Settled && AcrossLoad(l, state).Magnitude > load.Floor * load.Volts * (1 + Rounding))
            {
                state.Below[l] = false;
                state.Raised[l] = moved = true;
            }
        }

        if (!moved && state.Outcome == FlowOutcome.Collapsed && state.Worst >= 0 && _loads[state.Worst].Floor > 0)
        {
            // It fell without end, whatever the last pass left.
            return state.Below[state.Worst] = true;
        }

        return moved;
    }

    /// <summary>Whether a load keeps its power or current though it has less voltage than its floor.</summary>
    private bool IsStarved(int l, FlowState state)
    {
        ref readonly LoadRow load = ref _loads[l];
        return load.Floor > 0 && !IsImpedance(l, state) && IsLive(l, state) && state.Powers[l] != default
            && !(AcrossLoad(l, state).Magnitude >= load.Floor * load.Volts * (1 - AtRest));
    }

    private FlowOutcome Iterate(FlowState state)
    {
        double scale = 0;
        for (int t = 0; t < Terminals; t++)
        {
            state.Driven[_plan.PositionOf(t)] = _held[t] ? state.Volts[t] : default;
            scale = _held[t] ? Math.Max(scale, state.Volts[t].Magnitude) : scale;
        }

        Substitute(state, withCurrents: false);
        bool starved = false;
        for (int l = 0; l < Loads; l++)
        {
            state.FirstVolts[l] = AcrossLoad(l, state).Magnitude;
            starved |= !state.Raised[l] && IsStarved(l, state);
        }

        if (starved)
        {
            // Some load has too little even before anything is drawn: it is made an impedance first.
            return FlowOutcome.NotSettled;
        }

        (double least, int at) = (double.PositiveInfinity, 0);
        for (int pass = 1; pass <= MostIterations; pass++)
        {
            state.Iterations++;
            double change = Substitute(state, withCurrents: true);
            if (change <= AtRest * scale)
            {
                return FlowOutcome.Settled;
            }

            (least, at) = change < least ? (change, pass) : (least, at);
            bool stuck = pass - at > Patience;
            if (stuck && change <= Rounding * scale)
            {
                return FlowOutcome.Settled;
            }

            if (!double.IsFinite(change) || FindWorst(state) < Fallen || stuck)
            {
                FindWorst(state);
                return FlowOutcome.Collapsed;
            }
        }

        FindWorst(state);
        return FlowOutcome.NotSettled;
    }

    /// <summary>One pass: the greatest change of a voltage, V.</summary>
    private double Substitute(FlowState state, bool withCurrents)
    {
        Array.Copy(state.Driven, state.Values, Terminals);
        for (int l = 0; withCurrents && l < Loads; l++)
        {
            Phasor volts = AcrossLoad(l, state);
            Phasor driven = (state.Stamps[l] * volts) - CurrentAt(l, volts, state);
            state.Values[_plan.PositionOf(_loads[l].From)] += driven;
            if (_loads[l].To >= 0)
            {
                state.Values[_plan.PositionOf(_loads[l].To)] -= driven;
            }
        }

        for (int s = 0; s < _sources.Length; s++)
        {
            int held = _plan.PositionOf(_sources[s].Terminal);
            state.Values[held] = state.Driven[held];
        }

        PhasorFactors.Solve(_plan, state.Shares, state.Diagonals, state.Values);
        double change = 0;
        for (int t = 0; t < Terminals; t++)
        {
            Phasor value = state.Values[_plan.PositionOf(t)];
            double moved = (value - state.Volts[t]).SquaredMagnitude;
            change = moved <= change ? change : moved;
            state.Volts[t] = _held[t] ? state.Volts[t] : value;
        }

        return Math.Sqrt(change);
    }

    /// <summary>What a load draws at a voltage.</summary>
    private Phasor CurrentAt(int l, Phasor volts, FlowState state)
    {
        ref readonly LoadRow load = ref _loads[l];
        if (!IsLive(l, state) || volts == default)
        {
            return default;
        }

        if (IsImpedance(l, state))
        {
            return state.Stamps[l] * volts;
        }

        double per = load.Kind == LoadKind.Power ? 1 / volts.SquaredMagnitude : 1 / (load.Volts * volts.Magnitude);
        return per * (state.Powers[l].Conjugate * volts);
    }

    /// <summary>The least share that a load of constant power has left of the voltage it would have without loads; that load is the worst.</summary>
    private double FindWorst(FlowState state)
    {
        double least = double.PositiveInfinity;
        for (int l = 0; l < Loads; l++)
        {
            double share = AcrossLoad(l, state).Magnitude / state.FirstVolts[l];
            if (_loads[l].Kind == LoadKind.Power && !IsImpedance(l, state) && state.Powers[l] != default && state.FirstVolts[l] > 0 && !(share >= least))
            {
                least = share;
                state.Worst = l;
            }
        }

        return least;
    }

    private void Sum(FlowState state)
    {
        (Phasor drawn, Phasor lost, Phasor fed) = (default, default, default);
        for (int l = 0; l < Loads; l++)
        {
            Phasor volts = AcrossLoad(l, state);
            state.Amperes[l] = CurrentAt(l, volts, state);
            drawn += volts * state.Amperes[l].Conjugate;
            fed += HeldShare(_loads[l].From, state) * state.Amperes[l].Conjugate;
            fed -= (_loads[l].To < 0 ? default : HeldShare(_loads[l].To, state)) * state.Amperes[l].Conjugate;
        }

        for (int l = 0; l < _lines.Length; l++)
        {
            LineRow line = _lines[l];
            for (int w = 0; w < line.From.Length; w++)
            {
                Phasor amperes = CurrentOf(l, w, state).Conjugate;
                lost += (((1 / line.Ratio) * state.Volts[line.From[w]]) - state.Volts[line.To[w]]) * amperes;
                fed += ((1 / line.Ratio) * HeldShare(line.From[w], state)) * amperes;
                fed -= HeldShare(line.To[w], state) * amperes;
            }
        }

        (state.Drawn, state.Lost, state.Fed) = (drawn, lost, fed);
    }

    private Phasor HeldShare(int terminal, FlowState state) => _held[terminal] ? state.Volts[terminal] : default;
}
