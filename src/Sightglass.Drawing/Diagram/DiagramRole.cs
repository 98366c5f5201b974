namespace Sightglass.Drawing.Diagram;

/// <summary>What part a node plays in a diagram.</summary>
public enum DiagramRole
{
    /// <summary>Holds an amount; drawn as a vessel with a level.</summary>
    Tank,

    /// <summary>A line or header: drawn as pipe.</summary>
    Line,

    /// <summary>Joins two nodes: valve, pump, filter…</summary>
    Path,

    /// <summary>Uses or makes: engine, compressor.</summary>
    Machine,

    /// <summary>Shows a formula of stores.</summary>
    Gauge,

    /// <summary>Shows the level of one tank at its wall.</summary>
    Glass,

    /// <summary>Acts on other nodes: push button, switch, handle.</summary>
    Control,
}
