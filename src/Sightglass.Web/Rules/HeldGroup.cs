using System.Collections.Immutable;
using Sightglass.Plant.Rules;

namespace Sightglass.Web.Rules;

/// <summary>Rows with the same verdict.</summary>
/// <param name="HasNumbers">Whether numbers and limits are shown.</param>
internal sealed record HeldGroup(string Title, ImmutableArray<RuleFinding> Findings, bool HasNumbers);
