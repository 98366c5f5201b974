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
    /// Sums up C/(hγ) − ∂Q/∂p place by place and factors it as it goes, without pivoting, and takes the right side of the first stage through the first substitution
    /// with it. For networks without pilots it is an M-matrix, where that is safe; pilots make it an assumption, so the largest factor by which a pivot shrank from its
    /// diagonal is watched: an attempt in which it passes <see cref="GreatestShrinkage"/> is refused, and a shorter one makes the diagonal stronger.
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
        Lanes* factors = _factors;
        Lanes* inverse = _inversePivots;
        Lanes* solution = _solution;
        Lanes* flows = frame.Q;
        Lanes* lower = factors;
        Lanes* upper = factors + Plan.Kept;
        int* sum = Topology.PlaceSums.Start;
        int* rowSum = Topology.RowSums.Start;
        int* column = Plan.Lower.Start;
        int* at = Plan.Eliminate.Start;
        int n = Plan.Size;
        Lanes shrinkage = default;
        for (int i = 0; i < n; i++)
        {
            Lanes* rowStart = lower;
            Lanes* end = lower + at[0];
            int right = at[1];
            for (at += 2; lower < end; lower++)
            {
                Lanes pivot = IndexStream.Read(inverse, at++);
                *lower = -(Less(Frame.Sum(terms, ref sum), factors, ref at) * pivot);
            }

            Lanes diagonal = Lanes.Fma(capacity[i], scale, Frame.Sum(terms, ref sum));
            Lanes inversePivot = Lanes.Of(1) / Less(diagonal, factors, ref at);
            inverse[i] = inversePivot;
            shrinkage = Lanes.Max(shrinkage, Lanes.Abs(diagonal * inversePivot));
            upper -= right;
            for (Lanes* place = upper; right > 0; right--)
            {
                *place++ = Less(Frame.Sum(terms, ref sum), factors, ref at);
            }

            Lanes* passed = rowStart;
            solution[i] = Substitute(Rodas3.First.Right(in frame.Stages, i, Frame.Sum(flows, ref rowSum)), ref passed, solution, ref column);
        }

        return Lanes.LessOrEqual(shrinkage, Lanes.Of(GreatestShrinkage));
    }

    /// <summary>A place less its products of factors; those left of the diagonal are kept negative.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Lanes Less(Lanes place, Lanes* factors, ref int* at)
    {
        int* next = at + 1;
        int* end = next + (2 * *at);
        for (; next < end; next += 2)
        {
            place = Lanes.Fma(IndexStream.Read(factors, next), IndexStream.Read(factors, next + 1), place);
        }

        at = end;
        return place;
    }

    /// <summary>A row's right side and so many products of factor and solution, as the two run by.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Lanes Substitute(Lanes right, ref Lanes* factor, Lanes* solution, ref int* column)
    {
        int* next = column + 1;
        int* end = next + *column;
        for (; next < end; next++)
        {
            right = Lanes.Fma(*factor++, IndexStream.Read(solution, next), right);
        }

        column = end;
        return right;
    }

    /// <summary>The first substitution of a stage with its right side; that of the first stage is made while factoring.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    private void SubstituteForward<TStage>(ref Frame frame)
        where TStage : struct, IStage
    {
        Lanes* flows = frame.Q;
        Lanes* lower = _factors;
        Lanes* solution = _solution;
        int n = Plan.Size;
        int* sum = Topology.RowSums.Start;
        int* column = Plan.Lower.Start;
        for (int i = 0; i < n; i++)
        {
            Lanes right = TStage.Right(in frame.Stages, i, TStage.HasFlows ? Frame.Sum(flows, ref sum) : default);
            solution[i] = Substitute(right, ref lower, solution, ref column);
        }
    }

    /// <summary>
    /// The second substitution of a stage, and what the changes of amount k = C·κ are for. Leaves the changes of potential in the solution array with the sign turned
    /// round, −κ, so that products are added here too.
    /// </summary>
    /// <param name="share">hγ.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    private void SubstituteBackward<TStage>(ref Frame frame, Lanes share)
        where TStage : struct, IStage
    {
        Lanes* solution = _solution;
        Lanes* capacity = frame.C;
        Lanes* inverse = _inversePivots;
        Lanes* upper = _factors + Plan.Left;
        int* column = Plan.Upper.Start;
        for (int i = Plan.Size - 1; i >= 0; i--)
        {
            Lanes left = Substitute(solution[i], ref upper, solution, ref column);
            Lanes inversePivot = inverse[i];
            solution[i] = left * -inversePivot;
            TStage.Take(in frame.Stages, i, capacity[i] * (left * inversePivot));
        }

        Lanes* cross = frame.Cross;
        foreach ((int row, int second) in Topology.Pairs)
        {
            TStage.Take(in frame.Stages, row, Lanes.Fma(cross[0], -solution[second], capacity[row] * -solution[row]));
            TStage.Take(in frame.Stages, second, Lanes.Fma(cross[1], -solution[row], capacity[second] * -solution[second]));
            cross += 2;
        }

        Book<TStage>(ref frame, share);
    }

    /// <summary>
    /// What boundaries get in a stage: k = hγ·(right side + ∂Q/∂p·κ), the very flows and slopes that the rows of their neighbours have, so that nothing is lost on
    /// the way. Their own potentials stand still and are in no column: nothing is to be eliminated.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private void Book<TStage>(ref Frame frame, Lanes share)
        where TStage : struct, IStage
    {
        Lanes* flows = frame.Q;
        Lanes* slopes = frame.D;
        Lanes* solution = _solution;
        int* sum = Topology.BoundarySums.Start;
        int* at = Topology.BoundaryProducts.Start;
        int n = Topology.Amounts;
        for (int i = Plan.Size; i < n; i++)
        {
            Lanes right = TStage.Right(in frame.Stages, i, TStage.HasFlows ? Frame.Sum(flows, ref sum) : default);
            int* next = at + 2;
            int* taken = next + (2 * at[0]);
            int* end = taken + (2 * at[1]);
            for (; next < taken; next += 2)
            {
                right = Lanes.Fma(IndexStream.Read(slopes, next), IndexStream.Read(solution, next + 1), right);
            }

            for (; next < end; next += 2)
            {
                right = Lanes.Fma(-IndexStream.Read(slopes, next), IndexStream.Read(solution, next + 1), right);
            }

            at = end;
            Lanes change = share * right;
            solution[i] = change;
            TStage.Take(in frame.Stages, i, change);
        }
    }
}
