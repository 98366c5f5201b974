namespace Sightglass.Drawing.Diagram;

/// <summary>Sizes of a diagram in pixels; the tank's upper edge is 0.</summary>
internal static class DiagramMeasure
{
    public const double TankHeight = 158;
    public const double LeastTankWidth = 132;
    public const double GlassRoom = 40;
    public const double TankGap = 24;
    public const double MachineWidth = 112;
    public const double MachineHeight = 104;

    /// <summary>From one symbol on a vertical pipe to the next.</summary>
    public const double RowPitch = 60;

    /// <summary>From one lane below to the next.</summary>
    public const double LanePitch = 118;

    /// <summary>From one lane above to the next.</summary>
    public const double TopLanePitch = 34;

    public const double ReturnSlot = 48;
    public const double FillSlot = 28;
    public const double TapSlot = 16;
    public const double VentSlot = 28;
    public const double SupplySlot = 56;
    public const double DrainSlot = 40;

    /// <summary>Pipe left between two symbols of a run.</summary>
    public const double RunGap = 26;
}
