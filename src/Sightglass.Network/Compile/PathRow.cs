namespace Sightglass.Network.Compile;

/// <summary>A path waiting to be compiled.</summary>
internal sealed record PathRow(string Name, Amount[] Potentials, Flow[] Flows, Input[] Inputs, int FirstParameter, PathBatchFactory Factory);
