namespace Sightglass.Drawing.Diagram;

/// <summary>A machine's state: whether it runs, and up to two lines such as <c>notch 5</c> and <c>412 L/h</c>.</summary>
public sealed record DiagramMachine(bool Runs, string First = "", string Second = "");
