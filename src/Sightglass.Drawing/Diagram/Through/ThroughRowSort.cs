namespace Sightglass.Drawing.Diagram;

/// <summary>What a row holds.</summary>
internal enum ThroughRowSort
{
    /// <summary>Tanks and reservoirs, at the top.</summary>
    Vessels,

    /// <summary>Lines of the vehicle's own.</summary>
    Lines,

    /// <summary>A line that goes through.</summary>
    Bus,

    /// <summary>Cylinders, at the foot.</summary>
    Cylinders,
}
