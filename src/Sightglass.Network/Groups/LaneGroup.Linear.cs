using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;
using Sightglass.Network.Compile;
using Sightglass.Network.Step;

namespace Sightglass.Network.Groups;

public sealed unsafe partial class LaneGroup
{
    /// <summary>Diagonal over pivot beyond which eight of sixteen digits would be lost.</summary>
    private const double GreatestShrinkage = 1e8;

    private FactorPlan Plan => Topology.Plan;

    /// <summary>
    /// Sums up C/(hγ) − ∂Q/∂p row by row and factors each row at once, without pivoting. For networks without pilots it is an M-matrix, where that is safe;
    /// pilots make it an assumption, so the largest factor by which a pivot shrank from its diagonal is watched: an attempt in which it passes
    /// <see cref="GreatestShrinkage"/> is refused, and a shorter one makes the diagonal stronger.
    /// </summary>
    /// <returns>All ones in the lanes whose solution is to be trusted.</returns>
    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    private Lanes Factor(ref Frame frame, Lanes scale)
    {
        Lanes* terms = frame.D;
        int across = 2 * Topology.Pairs.Length;
        for (int i = 0; i < across; i++)
        {
            terms[Topology.Slopes + i] = frame.Cross[i] * scale;
        }

        Lanes* capacity = frame.C;
        Lanes* matrix = _matrix;
        Lanes* inverse = _inversePivots;
        Lanes* place = matrix;
        int* sum = Topology.PlaceSums.Start;
        int* at = Plan.Eliminate.Start;
        int n = Plan.Size;
        Lanes shrinkage = default;
        for (int i = 0; i < n; i++)
        {
            for (Lanes* end = place + at[0]; place < end; place++)
            {
                *place = Frame.Sum(terms, ref sum);
            }

            Lanes* pivot = matrix + at[1];
            Lanes diagonal = Lanes.Fma(capacity[i], scale, *pivot);
            *pivot = diagonal;
            int rows = at[2];
            for (at += 3; rows > 0; rows--)
            {
                Lanes factor = matrix[at[1]] * inverse[at[0]];
                matrix[at[1]] = factor;
                Lanes minus = -factor;
                int* end = at + 3 + (2 * at[2]);
                for (at += 3; at < end; at += 2)
                {
                    matrix[at[0]] = Lanes.Fma(minus, matrix[at[1]], matrix[at[0]]);
                }
            }

            Lanes inversePivot = Lanes.Of(1) / *pivot;
            inverse[i] = inversePivot;
            shrinkage = Lanes.Max(shrinkage, Lanes.Abs(diagonal * inversePivot));
        }

        return Lanes.LessOrEqual(shrinkage, Lanes.Of(GreatestShrinkage));
    }

    /// <summary>One stage: its right side, the two substitutions, and what the changes of amount k = C·κ are for. Leaves the changes of potential κ in the solution array.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    private void Solve<TStage>(ref Frame frame)
        where TStage : struct, IStage
    {
        Lanes* flows = frame.Q;
        Lanes* matrix = _matrix;
        Lanes* solution = _solution;
        int n = Plan.Size;
        int* sum = Topology.RowSums.Start;
        int* at = Plan.Lower.Start;
        for (int i = 0; i < n; i++)
        {
            Lanes right = TStage.Right(in frame.Stages, i, TStage.HasFlows ? Frame.Sum(flows, ref sum) : default);
            int* end = at + 1 + (2 * *at);
            for (at++; at < end; at += 2)
            {
                right = Lanes.Fma(-matrix[at[0]], solution[at[1]], right);
            }

            solution[i] = right;
        }

        Lanes* capacity = frame.C;
        Lanes* inverse = _inversePivots;
        at = Plan.Upper.Start;
        for (int i = n - 1; i >= 0; i--)
        {
            Lanes left = solution[i];
            int* end = at + 1 + (2 * *at);
            for (at++; at < end; at += 2)
            {
                left = Lanes.Fma(-matrix[at[0]], solution[at[1]], left);
            }

            Lanes change = left * inverse[i];
            solution[i] = change;
            TStage.Take(in frame.Stages, i, capacity[i] * change);
        }

        Lanes* cross = frame.Cross;
        foreach ((int row, int second) in Topology.Pairs)
        {
            TStage.Take(in frame.Stages, row, Lanes.Fma(cross[0], solution[second], capacity[row] * solution[row]));
            TStage.Take(in frame.Stages, second, Lanes.Fma(cross[1], solution[row], capacity[second] * solution[second]));
            cross += 2;
        }
    }
}
