namespace Sightglass.Drawing.Loads;

/// <summary>Something else in a plan of loads: a spring, or what lies on the body.</summary>
/// <param name="Id">Its item.</param>
/// <param name="Label">As a person calls it.</param>
/// <param name="X">m, along the train.</param>
/// <param name="Y">m to the right of the train's middle.</param>
public sealed record LoadPoint(string Id, string Label, double X, double Y);
