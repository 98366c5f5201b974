using System.Collections.Immutable;

namespace Sightglass.Cli.Serving;

/// <summary>How trainees come in.</summary>
/// <param name="Addresses">What they open, the likeliest first.</param>
/// <param name="Code">Six digits, to be said aloud.</param>
/// <param name="IsSecured">Whether nobody on that network can read along.</param>
internal sealed record RoomOpen(ImmutableArray<string> Addresses, string Code, bool IsSecured);
