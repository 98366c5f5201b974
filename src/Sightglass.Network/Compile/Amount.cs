namespace Sightglass.Network.Compile;

/// <summary>One conserved amount (and its potential) of a store, counted in the order of building.</summary>
public readonly record struct Amount(int Index)
{
    /// <summary>No amount: a flow that comes from or goes to nowhere (only for followers).</summary>
    public static readonly Amount None = new(-1);

    public bool IsNone => Index < 0;
}
