using Sightglass.Basics.Numbers;
using Sightglass.Network.Compile;
using Sightglass.Network.Step;

namespace Sightglass.Network.Groups;

public sealed unsafe partial class LaneGroup
{
    /// <summary>Diagonal over pivot beyond which eight of sixteen digits would be lost.</summary>
    private const double GreatestShrinkage = 1e8;

    /// <summary>
    /// Adds C/(hγ) to the matrix and factors it without pivoting. For networks without pilots it is an M-matrix, where that is safe;
    /// pilots make it an assumption, so the largest factor by which a pivot shrank from its diagonal is watched: an attempt in which it passes
    /// <see cref="GreatestShrinkage"/> is refused, and a shorter one makes the diagonal stronger.
    /// </summary>
    /// <returns>All ones in the lanes whose solution is to be trusted.</returns>
    private Lanes Factor(Lanes scale)
    {
        FactorPlan plan = Plan;
        for (int i = 0; i < plan.Size; i++)
        {
            Lanes diagonal = _matrix[plan.Diagonal[i]] + (_capacity[i] * scale);
            _matrix[plan.Diagonal[i]] = diagonal;
            _solution[i] = diagonal;
        }

        int cross = 0;
        foreach ((_, _, int upper, int lower) in Topology.CrossPlaces)
        {
            if (upper >= 0)
            {
                _matrix[upper] += _cross[cross] * scale;
                _matrix[lower] += _cross[cross + 1] * scale;
            }

            cross += 2;
        }

        fixed (int* stream = plan.Eliminate, diagonal = plan.Diagonal)
        {
            int* at = stream;
            int* end = stream + plan.Eliminate.Length;
            int pivot = -1;
            Lanes inverse = default;
            while (at < end)
            {
                if (at[0] != pivot)
                {
                    pivot = at[0];
                    inverse = Lanes.Of(1) / _matrix[diagonal[pivot]];
                }

                Lanes factor = _matrix[at[1]] * inverse;
                _matrix[at[1]] = factor;
                Lanes minus = -factor;
                int count = at[2];
                at += 3;
                for (int i = 0; i < count; i++, at += 2)
                {
                    _matrix[at[0]] = Lanes.Fma(minus, _matrix[at[1]], _matrix[at[0]]);
                }
            }

            Lanes trusted = Lanes.LessOrEqual(scale, scale);
            for (int i = 0; i < plan.Size; i++)
            {
                Lanes inversePivot = Lanes.Of(1) / _matrix[diagonal[i]];
                _inversePivots[i] = inversePivot;
                Lanes shrinkage = Lanes.Abs(_solution[i] * inversePivot);
                trusted = Lanes.And(trusted, Lanes.LessOrEqual(shrinkage, Lanes.Of(GreatestShrinkage)));
            }

            return trusted;
        }
    }

    /// <summary>Solves for the right side given; the solution, changes of potential, is left in the solution array.</summary>
    private void Solve(Lanes* right)
    {
        FactorPlan plan = Plan;
        fixed (int* lower = plan.Lower, lowerStart = plan.LowerStart, upper = plan.Upper, upperStart = plan.UpperStart)
        {
            int* at = lower;
            for (int i = 0; i < plan.Size; i++)
            {
                Lanes sum = right[i];
                for (int* end = lower + (2 * lowerStart[i + 1]); at < end; at += 2)
                {
                    sum = Lanes.Fma(-_matrix[at[0]], _solution[at[1]], sum);
                }

                _solution[i] = sum;
            }

            for (int i = plan.Size - 1; i >= 0; i--)
            {
                Lanes sum = _solution[i];
                int* end = upper + (2 * upperStart[i + 1]);
                for (at = upper + (2 * upperStart[i]); at < end; at += 2)
                {
                    sum = Lanes.Fma(-_matrix[at[0]], _solution[at[1]], sum);
                }

                _solution[i] = sum * _inversePivots[i];
            }
        }
    }

    private FactorPlan Plan => Topology.Plan;

    /// <summary>Changes of amount from changes of potential: k = C·κ.</summary>
    private void Spread(Lanes* change)
    {
        for (int i = 0; i < Topology.Amounts; i++)
        {
            change[i] = _capacity[i] * _solution[i];
        }

        int cross = 0;
        foreach ((int row, int second, _, _) in Topology.CrossPlaces)
        {
            change[row] = Lanes.Fma(_cross[cross], _solution[second], change[row]);
            change[second] = Lanes.Fma(_cross[cross + 1], _solution[row], change[second]);
            cross += 2;
        }
    }
}
