namespace Sightglass.Book.Model;

/// <param name="Style">outline, part, detail, tint, glass, solid, or lettering.</param>
/// <param name="Path">SVG path data in metres: on right and left sides x as in the class's axes (from the front), on ends y; up is z above rail.</param>
/// <param name="Text">For lettering.</param>
public sealed record Shape(string Style, string Path, string? Text = null);
