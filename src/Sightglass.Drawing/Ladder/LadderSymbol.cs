namespace Sightglass.Drawing.Ladder;

/// <summary>How a part of a circuit is drawn, after IEC 60617 (from memory).</summary>
public enum LadderSymbol
{
    Battery,
    Charger,
    Motor,
    Resistance,
    Contact,
    Breaker,
    Coil,
    Load,
    Lamp,
    Diode,
}
