namespace Sightglass.Drawing.Diagram;

/// <summary>Symbols after the usage of ISO 1219 and ISO 14617 (from memory).</summary>
public enum DiagramSymbol
{
    Box,
    Tank,
    Line,
    Valve,
    Check,
    CutOff,
    Pump,
    Filter,
    Orifice,
    Pipe,
    Fill,
    Drain,
    Engine,
    Gauge,
    Glass,
    Button,
    Switch,
    Handle,
    Reservoir,
    Cylinder,
    Compressor,
    Relief,
    Regulator,
    Relay,
    ControlValve,
    Vent,
    Coupling,
}
