namespace Sightglass.Drawing.Diagram;

/// <summary>What an indication shows.</summary>
/// <param name="Text">As it is written, with its unit.</param>
/// <param name="Fraction">For a sight glass: the part of the tube that is filled, 0…1.</param>
public sealed record DiagramReading(string Text, double? Fraction = null);
