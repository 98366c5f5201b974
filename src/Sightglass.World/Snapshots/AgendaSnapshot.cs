using Sightglass.World.Agenda;

namespace Sightglass.World.Snapshots;

/// <summary>One thing to come; ticks.</summary>
public sealed record AgendaSnapshot(long Time, AgendaKind Kind, int Id);
