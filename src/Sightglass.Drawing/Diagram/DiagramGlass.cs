namespace Sightglass.Drawing.Diagram;

/// <summary>A sight glass at a tank's wall.</summary>
/// <param name="Left">At the left wall, or the right one.</param>
/// <param name="X">Left edge of the tube.</param>
public sealed record DiagramGlass(DiagramNode Node, DiagramNode Tank, bool Left, double X, double Wall, double Top, double Bottom);
