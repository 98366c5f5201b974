namespace Sightglass.Training.Drills;

/// <summary>A step that a drill does not miss.</summary>
/// <param name="Card">The title of its card.</param>
/// <param name="Step">Its number.</param>
/// <param name="Text">As printed.</param>
public sealed record DrillShortcut(string Card, int Step, string Text);
