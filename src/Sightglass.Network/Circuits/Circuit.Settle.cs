namespace Sightglass.Network.Circuits;

/// <summary>Coils and diodes brought to rest, in a fixed order and with a bound.</summary>
public sealed partial class Circuit
{
    /// <summary>Rounds in which all diodes that are wrong turn at once, before one turns at a time.</summary>
    private const int BlockRounds = 8;

    /// <summary>Share of the voltages within which a diode is left as it is: both states give the same current there.</summary>
    private const double AtTheDrop = 1e-12;

    private void Settle(CircuitState state)
    {
        state.Rounds = 0;
        Array.Clear(state.Conducting);
        Array.Copy(state.UpCoils, state.Before, _coils.Length);
        state.Outcome = SettleTogether(state) ? CircuitOutcome.Settled : CircuitOutcome.Chatter;
        if (state.Outcome == CircuitOutcome.Chatter)
        {
            Array.Copy(state.Before, state.UpCoils, _coils.Length);
            state.Outcome = SettleOneByOne(state) ? CircuitOutcome.Race : CircuitOutcome.Chatter;
        }
    }

    /// <summary>All coils that want to move do so at once, as armatures of one make would. A chain of n coils needs n rounds.</summary>
    private bool SettleTogether(CircuitState state)
    {
        for (int round = 0; round < (2 * _coils.Length) + 4; round++)
        {
            bool still = SolveDiodes(state);
            for (int c = 0; c < _coils.Length; c++)
            {
                state.Together[c] = IsWantedUp(c, state) != state.UpCoils[c];
                still &= !state.Together[c];
            }

            if (still)
            {
                return true;
            }

            for (int c = 0; c < _coils.Length; c++)
            {
                state.UpCoils[c] ^= state.Together[c];
            }
        }

        return false;
    }

    /// <summary>The first coil in order that wants to move does so, then all are looked at again.</summary>
    private bool SettleOneByOne(CircuitState state)
    {
        int[] moves = state.Moves;
        Array.Clear(moves);
        for (int round = 0; round < (4 * _coils.Length) + 8; round++)
        {
            bool still = SolveDiodes(state);
            int first = 0;
            while (first < _coils.Length && IsWantedUp(first, state) == state.UpCoils[first])
            {
                first++;
            }

            if (first == _coils.Length)
            {
                return still;
            }

            state.UpCoils[first] = !state.UpCoils[first];
            moves[first]++;
        }

        SolveDiodes(state);
        return false;
    }

    private bool IsWantedUp(int coil, CircuitState state)
    {
        ref readonly CoilRow row = ref _coils[coil];
        if (state.Openings[row.Branch] <= 0)
        {
            // A broken winding has its voltage and no current.
            return false;
        }

        double volts = Across(row.Branch, state);
        volts = row.Polarised ? volts : Math.Abs(volts);
        return state.UpCoils[coil] ? volts > row.Drop : volts >= row.Pick;
    }

    /// <summary>
    /// Finds which diodes conduct: all that are wrong turn at once, and if that does not come to rest the first that is wrong turns alone, which ends for every net whose
    /// characteristics rise. Source: least-index rule of principal pivoting (Murty 1974, from memory).
    /// </summary>
    private bool SolveDiodes(CircuitState state)
    {
        for (int round = 0; ; round++)
        {
            Solve(state);
            bool turned = false;
            for (int d = 0; d < _diodes.Length && !(turned && round >= BlockRounds); d++)
            {
                double over = Across(_diodes[d].Branch, state) - _diodes[d].Drop;
                double doubt = AtTheDrop * (Math.Abs(state.Volts[_rows[_diodes[d].Branch].A]) + Math.Abs(state.Volts[_rows[_diodes[d].Branch].B]) + _diodes[d].Drop);
                if (state.Conducting[d] ? over < -doubt : over > doubt)
                {
                    state.Conducting[d] = !state.Conducting[d];
                    turned = true;
                }
            }

            if (!turned || round > BlockRounds + (8 * _diodes.Length))
            {
                state.RestlessDiode = turned;
                return !turned;
            }
        }
    }

    private double Across(int branch, CircuitState state) => state.Volts[_rows[branch].A] - state.Volts[_rows[branch].B];

    /// <summary>Potentials and currents for coils and diodes as they are.</summary>
    private void Solve(CircuitState state)
    {
        state.Rounds++;
        for (int b = 0; b < _rows.Length; b++)
        {
            ref readonly BranchRow row = ref _rows[b];
            double g = row.Conductance;
            if (row.Valve >= 0)
            {
                ref readonly DiodeRow diode = ref _diodes[row.Valve];
                double more = state.Conducting[row.Valve] ? diode.Conductance : 0;
                g += more;
                state.Forces[b] = -diode.Drop * more / g;
            }

            bool closed = row.Gate < 0 || state.UpCoils[row.Gate] == row.ClosedWhenUp;
            state.Conductances[b] = closed ? g * state.Openings[b] : 0;
        }

        Factor(state);
        Drive(state);
        StarMesh.Solve(_plan, state.Meshed, state.Shares, state.Driven, state.Values);
        for (int n = 0; n < Nodes; n++)
        {
            state.Volts[n] = state.Values[_plan.PositionOf(n)];
        }

        for (int b = 0; b < _rows.Length; b++)
        {
            state.Amperes[b] = state.Conductances[b] * (Across(b, state) + state.Forces[b]);
        }
    }

    /// <summary>Eliminates anew only if some conductance has changed.</summary>
    private void Factor(CircuitState state)
    {
        if (state.HasFactors && state.Conductances.AsSpan().SequenceEqual(state.Factored))
        {
            return;
        }

        Array.Clear(state.Meshed);
        for (int b = 0; b < _rows.Length; b++)
        {
            if (_places[b] >= 0)
            {
                state.Meshed[_places[b]] += state.Conductances[b];
            }
        }

        StarMesh.Eliminate(_plan, state.Meshed, state.Shares);
        StarMesh.Root(_plan, state.Shares, state.Roots);
        Array.Copy(state.Conductances, state.Factored, _rows.Length);
        state.HasFactors = true;
    }

    /// <summary>What sources drive through their branches, and the potentials of the nodes that are held.</summary>
    private void Drive(CircuitState state)
    {
        Array.Clear(state.Driven);
        for (int b = 0; b < _rows.Length; b++)
        {
            if (_places[b] >= 0 && state.Forces[b] != 0)
            {
                double driven = state.Conductances[b] * state.Forces[b];
                state.Driven[_places[b]] += _plan.PositionOf(_rows[b].A) < _plan.PositionOf(_rows[b].B) ? driven : -driven;
            }
        }

        foreach (HoldRow hold in _holds)
        {
            state.Values[_plan.PositionOf(hold.Node)] = state.Volts[hold.Node];
        }
    }
}
