using System.Collections.Immutable;
using Sightglass.Trials.Causes;

namespace Sightglass.Web.Searches;

/// <summary>What came out of a search.</summary>
/// <param name="Table">Null where nothing could be worked out.</param>
/// <param name="Holds">In how many cases the fact came to hold while nothing was wrong.</param>
/// <param name="Wrong">What does not fit the plant.</param>
public sealed record SearchWorked(CauseTable? Table, int Holds, ImmutableArray<string> Wrong);
