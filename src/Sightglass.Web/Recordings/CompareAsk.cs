namespace Sightglass.Web.Recordings;

/// <summary>What somebody asks when a recording is held against the machine.</summary>
/// <param name="Situation">That tells what the recording does not; empty: all of it is as usual.</param>
/// <param name="Rows">Rows that are run at most, evenly spread.</param>
/// <param name="AfterSeconds">How long the machine has to settle, s.</param>
public sealed record CompareAsk(string Situation, int Rows, double AfterSeconds);
