using System.Collections.Immutable;

namespace Sightglass.Web.Room;

/// <summary>How trainees on the same network come in.</summary>
/// <param name="Addresses">What they open, the likeliest first.</param>
/// <param name="Code">To be said aloud.</param>
/// <param name="IsSecured">Whether nobody on that network can read along.</param>
public sealed record RoomTold(ImmutableArray<string> Addresses, string Code, bool IsSecured);
