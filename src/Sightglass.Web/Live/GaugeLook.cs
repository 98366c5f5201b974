namespace Sightglass.Web.Live;

/// <summary>What a gauge shows and what is true; SI, either may be absent.</summary>
public readonly record struct GaugeLook(double? Reading, double? Truth);
