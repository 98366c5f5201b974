using Sightglass.Network.Phasors;

namespace Sightglass.Plant.Feeders;

/// <summary>Three phases at one place.</summary>
internal sealed record Busbar(Terminal A, Terminal B, Terminal C)
{
    public Terminal this[int phase] => phase switch { 0 => A, 1 => B, _ => C };

    public Terminal[] Phases => [A, B, C];
}
