namespace Sightglass.Drawing.Labels;

/// <summary>A flag that would rather fly above or below the machine.</summary>
/// <param name="Up">Where it would rather fly.</param>
/// <param name="MoveCost">What it costs to fly on the other side, in tiers; the smaller the sooner.</param>
/// <param name="Priority">Flags of the lowest priority are given up first where there is no room.</param>
public readonly record struct FlagWish(FlagRequest Request, bool Up, double MoveCost, int Priority);
