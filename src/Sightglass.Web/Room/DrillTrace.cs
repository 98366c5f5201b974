using System.Collections.Immutable;
using Sightglass.Basics.Time;

namespace Sightglass.Web.Room;

/// <summary>What a drill's quantities have been, and where its people were. Immutable.</summary>
/// <param name="Moments">Oldest first, each with a value of every topic, SI.</param>
/// <param name="Walks">Of each person the places, each with the moment from which they were there; null: on the way.</param>
public sealed record DrillTrace(ImmutableArray<DrillMoment> Moments, ImmutableArray<ImmutableArray<(SimTime At, string? Place)>> Walks)
{
    public static DrillTrace Empty { get; } = new([], []);
}
