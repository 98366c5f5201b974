namespace Sightglass.Network.Compile;

/// <summary>A store waiting to be compiled.</summary>
internal sealed record StoreRow(string Name, int FirstAmount, int Count, bool IsBoundary, int FirstParameter, StoreBatchFactory Factory);
