using Sightglass.Network.Tests.Probes;

namespace Sightglass.Network.Tests.Laws;

/// <summary>Every law of the project with draws of its arguments. A test sees to it that none is missing.</summary>
public static partial class LawCases
{
    public static IEnumerable<LawCase> All => [.. Liquids, .. LiquidsThroughEnds, .. Gases, .. Followers, .. Plain];
}
