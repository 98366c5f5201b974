namespace Sightglass.Network.Springs;

/// <param name="X">m, about which it turns.</param>
/// <param name="First">Number of its first coordinate; they stand in the order of <see cref="Springs.Freedoms"/>.</param>
internal readonly record struct BodyRow(string Name, double X, double Y, Freedoms Freedoms, int First);
