namespace Sightglass.Network.Springs;

/// <summary>
/// Immutable rigid bodies one above the other on linear springs, moving a little down, in pitch and in roll. Solving is a pure function of the inputs: the same bits on every machine, nothing
/// allocated. Source: statics, R = k·(z + φ·x + θ·y) with the sums of forces and moments of each body at nothing.
/// </summary>
public sealed class Suspension
{
    /// <summary>Share of a coordinate's stiffness below which what is left after elimination is rounding: nothing resists.</summary>
    private const double Nothing = 1e-11;

    /// <summary>
    /// Share of its stiffness by which a spring that has lifted still holds while it is looked for which springs carry: so no body is loose meanwhile, and the rule ends. What is found is then worked
    /// out without.
    /// </summary>
    private const double Lightly = 1e-6;

    /// <summary>Share of the movements within which a spring is left as it is: it carries nothing either way there.</summary>
    private const double AtTheEdge = 1e-12;

    /// <summary>Rounds in which all springs that are wrong turn at once, before one turns at a time.</summary>
    private const int BlockRounds = 8;

    private readonly (string Name, double Start)[] _inputs;
    private readonly BodyRow[] _bodies;
    private readonly SpringRow[] _springs;
    private readonly WeightRow[] _weights;
    private readonly int _coordinates;

    internal Suspension((string Name, double Start)[] inputs, BodyRow[] bodies, SpringRow[] springs, WeightRow[] weights, int coordinates) =>
        (_inputs, _bodies, _springs, _weights, _coordinates) = (inputs, bodies, springs, weights, coordinates);

    public int Inputs => _inputs.Length;

    public int Springs => _springs.Length;

    public SuspensionState NewState() => new(this, _coordinates);

    /// <summary>The inputs' values at the start.</summary>
    public double[] NewInputs() => [.. _inputs.Select(i => i.Start)];

    /// <summary>Solves for inputs.</summary>
    /// <param name="inputs">One value each, in the order in which they were added.</param>
    /// <param name="state">Of this suspension; takes the result.</param>
    /// <exception cref="ArgumentException">The inputs or the state are another suspension's.</exception>
    public void Solve(ReadOnlySpan<double> inputs, SuspensionState state)
    {
        if (inputs.Length != _inputs.Length || state.Suspension != this)
        {
            throw new ArgumentException(FormattableString.Invariant($"The suspension has {_inputs.Length} inputs and a state of its own, not {inputs.Length} inputs or another's state."));
        }

        for (int i = 0; i < inputs.Length; i++)
        {
            state.BadInputs[i] = !double.IsFinite(inputs[i]);
            state.Given[i] = state.BadInputs[i] ? 0 : inputs[i];
        }

        Array.Fill(state.Carries, true);
        state.Rounds = 0;
        bool still = false;
        while (!still && state.Rounds < BlockRounds + (8 * _springs.Length))
        {
            Assemble(state, Lightly);
            Eliminate(state);
            still = !Turn(state);
            state.Rounds++;
        }

        Assemble(state, 0);
        Eliminate(state);
        FindForces(state);

        state.Outcome = state.Loose.AsSpan().Contains(true) ? StandOutcome.Falls : still ? StandOutcome.Stands : StandOutcome.NotSettled;
    }

    /// <summary>What is wrong with the bodies as they stand, in the order of the kinds, then as they were added.</summary>
    public IReadOnlyList<StandFinding> FindingsOf(SuspensionState state) =>
    [
        .. _bodies.Where(b => state.Loose.AsSpan(b.First, int.PopCount((int)b.Freedoms)).Contains(true)).Select(b => new StandFinding(StandFindingKind.Falls, b.Name)),
        .. _springs.Where((s, i) => !state.Carries[i] && StiffnessOf(s, state) > 0).Select(s => new StandFinding(StandFindingKind.Lifted, s.Name)),
        .. _inputs.Where((_, i) => state.BadInputs[i]).Select(i => new StandFinding(StandFindingKind.NotFinite, i.Name)),
    ];

    internal double SagOf(int body, double x, double y, SuspensionState state)
    {
        if (body < 0)
        {
            return 0;
        }

        double sag = 0;
        BodyRow row = _bodies[body];
        for (int i = 0, at = row.First; i < 3; i++)
        {
            if (Has(row, i))
            {
                sag += Arm(row, i, x, y) * state.Moves[at++];
            }
        }

        return sag;
    }

    private static bool Has(BodyRow row, int freedom) => ((int)row.Freedoms >> freedom & 1) != 0;

    /// <summary>How far a point goes down for each unit of a body's heave, pitch and roll.</summary>
    private static double Arm(BodyRow row, int freedom, double x, double y) => freedom == 0 ? 1 : freedom == 1 ? x - row.X : y - row.Y;

    private static double StiffnessOf(SpringRow spring, SuspensionState state) => spring.Stiffness * (spring.Factor < 0 ? 1 : Math.Max(0, state.Given[spring.Factor]));

    private static double GapOf(SpringRow spring, SuspensionState state) => spring.Gap < 0 ? 0 : state.Given[spring.Gap];

    private static int Place(int row, int column) => (row * (row + 1) / 2) + column;

    private void Assemble(SuspensionState state, double lightly)
    {
        Array.Clear(state.Matrix);
        Array.Clear(state.Loads);
        Array.Clear(state.Loose);
        foreach (WeightRow weight in _weights)
        {
            BodyRow body = _bodies[weight.Body];
            double size = state.Given[weight.Input];
            for (int i = 0, at = body.First; i < 3; i++)
            {
                if (Has(body, i))
                {
                    state.Loads[at++] += size * (i == 0 ? weight.Heave : i == 1 ? weight.Pitch : weight.Roll);
                }
            }
        }

        Span<int> at6 = stackalloc int[6];
        Span<double> arm6 = stackalloc double[6];
        for (int s = 0; s < _springs.Length; s++)
        {
            SpringRow spring = _springs[s];
            double k = StiffnessOf(spring, state) * (state.Carries[s] ? 1 : lightly);
            int n = Gather(spring.Upper, 1, spring, at6, arm6, 0);
            n = Gather(spring.Lower, -1, spring, at6, arm6, n);
            double gap = GapOf(spring, state);
            for (int i = 0; i < n; i++)
            {
                state.Loads[at6[i]] += k * gap * arm6[i];
                for (int j = 0; j < n; j++)
                {
                    if (at6[j] <= at6[i])
                    {
                        state.Matrix[Place(at6[i], at6[j])] += k * arm6[i] * arm6[j];
                    }
                }
            }
        }
    }

    /// <summary>The coordinates that shorten a spring, and by how much each.</summary>
    private int Gather(int body, double sign, SpringRow spring, Span<int> at, Span<double> arm, int n)
    {
        if (body < 0)
        {
            return n;
        }

        BodyRow row = _bodies[body];
        for (int i = 0, next = row.First; i < 3; i++)
        {
            if (Has(row, i))
            {
                at[n] = next++;
                arm[n++] = sign * Arm(row, i, spring.X, spring.Y);
            }
        }

        return n;
    }

    /// <summary>LDLᵀ row by row; a coordinate that nothing resists stays where it is.</summary>
    private void Eliminate(SuspensionState state)
    {
        double[] m = state.Matrix;
        double[] x = state.Loads;
        for (int i = 0; i < _coordinates; i++)
        {
            state.Whole[i] = m[Place(i, i)];
            for (int j = 0; j < i; j++)
            {
                double sum = m[Place(i, j)];
                for (int k = 0; k < j; k++)
                {
                    sum -= m[Place(i, k)] * m[Place(j, k)];
                }

                m[Place(i, j)] = state.Loose[j] ? 0 : sum;
            }

            // Rows hold L·D until their own diagonal is worked out.
            double pivot = m[Place(i, i)];
            for (int j = 0; j < i; j++)
            {
                double ld = m[Place(i, j)];
                m[Place(i, j)] = state.Loose[j] ? 0 : ld / m[Place(j, j)];
                pivot -= ld * m[Place(i, j)];
                x[i] -= m[Place(i, j)] * x[j];
            }

            state.Loose[i] = !(pivot > Nothing * state.Whole[i]);
            m[Place(i, i)] = state.Loose[i] ? 1 : pivot;
        }

        for (int i = _coordinates - 1; i >= 0; i--)
        {
            double sum = state.Loose[i] ? 0 : x[i] / m[Place(i, i)];
            for (int k = i + 1; k < _coordinates; k++)
            {
                sum -= m[Place(k, i)] * state.Moves[k];
            }

            state.Moves[i] = state.Loose[i] ? 0 : sum;
        }
    }

    /// <summary>Lets springs that would pull lift off and those that are pressed again carry: whether one turned. Source: as for diodes, the least-index rule (Murty 1974, from memory).</summary>
    private bool Turn(SuspensionState state)
    {
        bool turned = false;
        for (int s = 0; s < _springs.Length; s++)
        {
            double come = Come(s, state, out double doubt);
            bool wrong = !_springs[s].Pulls && (state.Carries[s] ? come < -doubt : come > doubt);
            if (wrong && !(turned && state.Rounds >= BlockRounds))
            {
                state.Carries[s] = !state.Carries[s];
                turned = true;
            }
        }

        return turned;
    }

    private void FindForces(SuspensionState state)
    {
        for (int s = 0; s < _springs.Length; s++)
        {
            state.Newtons[s] = state.Carries[s] ? StiffnessOf(_springs[s], state) * Come(s, state, out _) : 0;
        }
    }

    /// <summary>m by which a spring is pressed, and how much of that may be rounding.</summary>
    private double Come(int s, SuspensionState state, out double doubt)
    {
        SpringRow spring = _springs[s];
        double upper = SagOf(spring.Upper, spring.X, spring.Y, state);
        double lower = SagOf(spring.Lower, spring.X, spring.Y, state);
        double gap = GapOf(spring, state);
        doubt = AtTheEdge * (Math.Abs(upper) + Math.Abs(lower) + Math.Abs(gap));
        return upper - lower - gap;
    }
}
