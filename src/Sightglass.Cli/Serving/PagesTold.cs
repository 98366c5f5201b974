using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;

namespace Sightglass.Cli.Serving;

/// <summary>Who is told what while pages are served.</summary>
/// <param name="Serving">The address.</param>
/// <param name="Shared">How a phone is paired, and again with every new code.</param>
/// <param name="Unsaid">What is wrong with what the book says in other languages.</param>
/// <param name="Room">How trainees come in.</param>
internal sealed record PagesTold(Action<string> Serving, Action<ShareTold> Shared, Action<ImmutableArray<Diagnostic>> Unsaid, Action<RoomOpen> Room);
