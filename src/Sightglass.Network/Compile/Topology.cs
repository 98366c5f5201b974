using Sightglass.Network.Step;

namespace Sightglass.Network.Compile;

/// <summary>
/// A compiled network: immutable, shared by every lane group that runs it. Rows stand in elimination order;
/// <see cref="RowOf"/> leads from an amount of the builder to its row.
/// </summary>
public sealed class Topology
{
    internal Topology(FactorPlan plan) => Plan = plan;

    /// <summary>How many amounts (and rows) there are, boundaries included.</summary>
    public int Amounts { get; init; }

    /// <summary>How many inputs there are.</summary>
    public int Inputs => StartInputs.Length;

    /// <summary>How many parameters there are.</summary>
    public int Parameters => StartParameters.Length;

    /// <summary>How many paths there are.</summary>
    public int Paths => PathPlaces.Length;

    /// <summary>How many places the factored matrix has, which has no rows for boundaries: a measure of the cost of a step.</summary>
    public int FactoredValues => Plan.Values;

    internal int[] RowOf { get; init; } = [];

    internal string[] NameOfRow { get; init; } = [];

    internal FactorPlan Plan { get; }

    internal StoreBatch[] StoreBatches { get; init; } = [];

    internal PathBatch[] PathBatches { get; init; } = [];

    internal (int Batch, int Index)[] PathPlaces { get; init; } = [];

    /// <summary>How many flows the paths have together.</summary>
    internal int Flows { get; init; }

    /// <summary>How many slopes the flows have together. The capacities across follow them as further terms of places.</summary>
    internal int Slopes { get; init; }

    /// <summary>Which flows each row that is factored is the sum of (<see cref="SumPlan"/>).</summary>
    internal IndexStream RowSums { get; init; } = new([]);

    /// <summary>Which slopes (and capacities across) each place of the matrix is the sum of (<see cref="SumPlan"/>).</summary>
    internal IndexStream PlaceSums { get; init; } = new([]);

    /// <summary>Which flows each boundary is the sum of (<see cref="SumPlan"/>).</summary>
    internal IndexStream BoundarySums { get; init; } = new([]);

    /// <summary>Which products of a slope and the change of a potential each boundary is the sum of (<see cref="SumPlan"/>).</summary>
    internal IndexStream BoundaryProducts { get; init; } = new([]);

    /// <summary>Rows of stores with two amounts, boundaries left out.</summary>
    internal (int Row, int Second)[] Pairs { get; init; } = [];

    /// <summary>Range of each row's potential; 0 for boundaries, which are not judged.</summary>
    internal double[] Spans { get; init; } = [];

    internal double[] StartParameters { get; init; } = [];

    internal double[] StartAmounts { get; init; } = [];

    internal double[] StartInputs { get; init; } = [];

    /// <summary>The name of the store that an amount belongs to.</summary>
    public string NameOf(Amount amount) => NameOfRow[RowOf[amount.Index]];
}
