namespace Sightglass.Cli.Runs;

/// <summary>What a column's values are.</summary>
internal enum ColumnSort
{
    Quantity,

    /// <summary>1 where it holds, else 0.</summary>
    Condition,

    /// <summary>The number of a position.</summary>
    Position,
}
