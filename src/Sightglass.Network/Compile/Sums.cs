namespace Sightglass.Network.Compile;

/// <summary>What rows, places of the matrix and boundaries are sums of.</summary>
/// <param name="plan">The rows before its size are factored; those after it are boundaries'.</param>
/// <param name="amounts">Rows, boundaries included.</param>
internal sealed class Sums(FactorPlan plan, int amounts)
{
    /// <summary>The flows of each row that is factored.</summary>
    public SumPlan Rows { get; } = new(plan.Size);

    /// <summary>The flows of each boundary.</summary>
    public SumPlan Boundaries { get; } = new(amounts - plan.Size);

    /// <summary>The slopes of each place: −∂Q/∂p of its row by its column.</summary>
    public SumPlan Places { get; } = new(plan.Values);

    /// <summary>For each boundary, products of a slope and the change of its column's potential.</summary>
    public SumPlan Products { get; } = new(amounts - plan.Size, 2);

    /// <summary>Takes in a flow between two rows (−1: none).</summary>
    public void AddFlow(int from, int to, int flow)
    {
        if (from >= plan.Size) Boundaries.Take(from - plan.Size, flow);
        else if (from >= 0) Rows.Take(from, flow);
        if (to >= plan.Size) Boundaries.Add(to - plan.Size, flow);
        else if (to >= 0) Rows.Add(to, flow);
    }

    /// <summary>Takes in the slope of such a flow by the potential of a column.</summary>
    public void AddSlope(int from, int to, int column, int slope)
    {
        if (column >= plan.Size)
        {
            return;
        }

        if (from >= plan.Size) Products.Add(from - plan.Size, slope, column);
        else if (from >= 0) Places.Add(plan.PlaceOf(from, column), slope);
        if (to >= plan.Size) Products.Take(to - plan.Size, slope, column);
        else if (to >= 0) Places.Take(plan.PlaceOf(to, column), slope);
    }
}
