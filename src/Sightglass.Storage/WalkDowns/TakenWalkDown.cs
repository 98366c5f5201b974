using System.Collections.Immutable;

namespace Sightglass.Storage.WalkDowns;

/// <summary>What became of a result that was handed in; all of it is on disk.</summary>
/// <param name="New">Entries not known before.</param>
/// <param name="Newer">Entries of which a later revision came.</param>
/// <param name="Known">Entries that were there already, as they are or later.</param>
/// <param name="Proposed">New proposals.</param>
/// <param name="Kept">Every entry with the revision that is kept now.</param>
public sealed record TakenWalkDown(int New, int Newer, int Known, int Proposed, ImmutableArray<(Guid Id, int Revision)> Kept);
