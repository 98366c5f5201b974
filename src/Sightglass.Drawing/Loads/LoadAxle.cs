namespace Sightglass.Drawing.Loads;

/// <summary>An axle in a plan of loads.</summary>
/// <param name="Id">Its item.</param>
/// <param name="Label">As a person calls it.</param>
/// <param name="X">m, along the train.</param>
/// <param name="Most">kg that one of its wheels may carry; null where the book says nothing.</param>
/// <param name="Difference">kg by which its two wheels may differ; null where the book says nothing.</param>
public sealed record LoadAxle(string Id, string Label, double X, double? Most, double? Difference);
