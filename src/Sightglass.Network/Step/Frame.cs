using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;

namespace Sightglass.Network.Step;

/// <summary>The arrays that batches and stages of an attempt work on; every element is eight lanes wide.</summary>
internal unsafe struct Frame
{
    /// <summary>Parameters.</summary>
    public Lanes* K;

    /// <summary>Inputs.</summary>
    public Lanes* U;

    /// <summary>Amounts by row (those of the stage at hand).</summary>
    public Lanes* M;

    /// <summary>Potentials by row.</summary>
    public Lanes* P;

    /// <summary>Capacities on the diagonal, by row.</summary>
    public Lanes* C;

    /// <summary>Capacities across, two for each store with two amounts.</summary>
    public Lanes* Cross;

    /// <summary>Flows, batch by batch and path by path.</summary>
    public Lanes* Q;

    /// <summary>Slopes of the flows, in the same order, each by every potential its path sees.</summary>
    public Lanes* D;

    /// <summary>The potentials that the path at hand sees.</summary>
    public Lanes* Seen;

    /// <summary>The inputs of the path at hand.</summary>
    public Lanes* Given;

    /// <summary>Stage sums.</summary>
    public Stages Stages;

    /// <summary>The next sum of a <see cref="Compile.SumPlan"/>.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes Sum(Lanes* terms, ref int* at)
    {
        int* next = at + 2;
        int* taken = next + at[0];
        int* end = taken + at[1];
        Lanes sum = default;
        for (; next < taken; next++)
        {
            sum += IndexStream.Read(terms, next);
        }

        for (; next < end; next++)
        {
            sum -= IndexStream.Read(terms, next);
        }

        at = end;
        return sum;
    }
}
