namespace Sightglass.Network.Compile;

/// <summary>A store as built: its first amount, how many it has, and where its parameters start.</summary>
public readonly record struct StoreHandle(Amount First, int Count, int FirstParameter)
{
    public Amount Second => Count > 1 ? new(First.Index + 1) : throw new InvalidOperationException("This store has one amount.");
}
