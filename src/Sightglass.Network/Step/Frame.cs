using Sightglass.Basics.Numbers;

namespace Sightglass.Network.Step;

/// <summary>The arrays of a lane group that batches work on; every element is eight lanes wide.</summary>
internal unsafe ref struct Frame
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

    /// <summary>Sum of flows into each row; one dummy row at the end.</summary>
    public Lanes* Q;

    /// <summary>Matrix values; one dummy place at the end.</summary>
    public Lanes* A;
}
