namespace Sightglass.Web.Live;

/// <summary>What a gauge shows and what is true; SI, each may be absent.</summary>
/// <param name="Reading">What it shows.</param>
/// <param name="Truth">What ought to be shown.</param>
/// <param name="Air">Share of air in the line of liquid whose pressure it shows.</param>
public readonly record struct GaugeLook(double? Reading, double? Truth, double? Air = null);
