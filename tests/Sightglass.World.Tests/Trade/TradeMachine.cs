using Sightglass.Plant.Plans;

namespace Sightglass.World.Tests.Trade;

/// <summary>
/// The machine of the trade's fuel scenarios: compartments of 2 m² floor, a pump of 9 L/min, an engine that burns 0.5 L/min, discharge
/// coefficient 0.62 (common practice, no source). Pickups 10 cm above the floor, glasses from 3 cm up.
/// </summary>
internal static class TradeMachine
{
    /// <summary>Litres per minute in m³/s.</summary>
    public const double LitrePerMinute = 1e-3 / 60;

    private const string Body = """
        book: Trade
        edition: "1"
        notice: Invented.
        length: 20 m
        width: 3 m
        places:
          panel: { x: 10 m, y: 2.4 m, z: 0 m, text: Beside the tanks. }
          cab: { x: 9 m, y: 2.4 m, z: 0 m, text: Where the gauge hangs. }
        roles:
          hand: { walks: 1.3 m/s, reacts in: 2 s, text: Works the valves. }
          mate: { walks: 1.3 m/s, reacts in: 2 s, text: Helps. }
          desk: { walks: 1 m/s, reacts in: 10 s, text: Answers., goes to: [] }
          guard: { walks: 1.3 m/s, reacts in: 2 s, text: Stays., goes to: [cab] }
        systems:
          fuel: { medium: fuel, alive: yes, text: The fuel. }
        items:
          compartment A:
            kind: tank
            system: fuel
            position: { x: 8 m, y: 0 m, z: 0.5 m }
            shape: prismatic
            floor area: 2 m^2
            depth: 1.2 m
            ports: { supply: { height: 100 mm }, return: { height: 1.15 m } }
          compartment B:
            kind: tank
            system: fuel
            position: { x: 10 m, y: 0 m, z: 0.5 m }
            shape: prismatic
            floor area: 2 m^2
            depth: 1.2 m
            ports: { supply: { height: 100 mm }, return: { height: 1.15 m } }
          compartment C:
            kind: tank
            system: fuel
            position: { x: 12 m, y: 0 m, z: 0.5 m }
            shape: prismatic
            floor area: 2 m^2
            depth: 1.2 m
            ports: { supply: { height: 100 mm }, return: { height: 1.15 m } }
          manifold: { kind: fuel line, system: fuel, volume: 4 L, position: { x: 10 m, y: 0.5 m, z: 0.5 m } }
          return manifold: { kind: fuel line, system: fuel, volume: 1 L, position: { x: 10 m, y: -0.5 m, z: 0.6 m } }
          rail: { kind: fuel line, system: fuel, volume: 1 L, position: { x: 10 m, y: 0 m, z: 1.5 m } }
          supply valve A: { kind: hand valve, system: fuel, from: "compartment A, supply", to: manifold, area: 5 cm^2, usual: closed, places: [panel], who: [hand, mate], takes: 4 s, label: Supply A }
          supply valve B: { kind: hand valve, system: fuel, from: "compartment B, supply", to: manifold, area: 5 cm^2, usual: closed, places: [panel], who: [hand, mate], takes: 4 s, label: Supply B }
          supply valve C: { kind: hand valve, system: fuel, from: "compartment C, supply", to: manifold, area: 5 cm^2, usual: open, places: [panel], who: [hand, mate], takes: 4 s, label: Supply C }
          return valve A: { kind: hand valve, system: fuel, from: return manifold, to: "compartment A, return", area: 5 cm^2, usual: closed, places: [panel], who: [hand, mate], takes: 4 s, label: Return A }
          return valve B: { kind: hand valve, system: fuel, from: return manifold, to: "compartment B, return", area: 5 cm^2, usual: closed, places: [panel], who: [hand, mate], takes: 4 s, label: Return B }
          return valve C: { kind: hand valve, system: fuel, from: return manifold, to: "compartment C, return", area: 5 cm^2, usual: closed, places: [panel], who: [hand, mate], takes: 4 s, label: Return C }
          pump: { kind: displacement pump, system: fuel, from: manifold, to: rail, flow: 9 L/min, slip: 0 %, driven by: engine }
          regulator: { kind: check valve, system: fuel, from: rail, to: return manifold, area: 0.5 cm^2, opens at: 30 psi }
          engine: { kind: engine, system: fuel, from: rail, to: outside, consumption: { idle: 0.5 L/min, full: 8.5 L/min }, throttle: throttle, usual: running, places: [cab], who: [hand, mate], takes: 5 s }
          throttle: { kind: handle, system: fuel, positions: [idle, full], usual: idle, places: [cab], who: [hand, mate], takes: 1 s }
          lamp switch: { kind: handle, system: fuel, positions: ["off", "on"], usual: "off", places: [cab], who: [mate], takes: 1 s }
          heater switch: { kind: handle, system: fuel, positions: ["off", "on"], usual: "off", places: [cab], who: [mate], permission: desk, takes: 1 s }
          shutter: { kind: handle, system: fuel, positions: [down, up], usual: down, places: [panel], who: [mate, guard], takes: 1 s }
          sight glass A: { kind: sight glass, of: compartment A, bottom: 30 mm, top: 1.15 m, scale: 3 cm .. 115 cm, resolution: 1 cm, places: [panel], words: { empty: 3 cm .. 4 cm, low: 3 cm .. 15 cm }, label: Glass A, position: { x: 8 m, y: 1 m, z: 1 m } }
          sight glass B: { kind: sight glass, of: compartment B, bottom: 30 mm, top: 1.15 m, scale: 3 cm .. 115 cm, resolution: 1 cm, places: [panel], words: { empty: 3 cm .. 4 cm, low: 3 cm .. 15 cm }, label: Glass B, position: { x: 10 m, y: 1 m, z: 1 m } }
          sight glass C: { kind: sight glass, of: compartment C, bottom: 30 mm, top: 1.15 m, scale: 3 cm .. 115 cm, resolution: 1 cm, places: [panel], words: { empty: 3 cm .. 4 cm, low: 3 cm .. 15 cm }, label: Glass C, position: { x: 12 m, y: 1 m, z: 1 m } }
          fuel gauge: { kind: gauge, shows: (volume of compartment B + volume of compartment C) / 4800 L, scale: 0 % .. 100 %, resolution: 1 %, places: [cab], words: { low: 0 % .. 15 % }, label: Gauge }
        facts:
          engine runs: { is: running of engine }
          engine starves: { is: running of engine and want of engine > 0.5 }
          a compartment overflows: { is: overflow of compartment A + overflow of compartment B + overflow of compartment C > 1 L/min }
        """;

    /// <summary>The machine with its situations, and cards.</summary>
    public static Plan Plan(string situations, params ReadOnlySpan<string> cards) => Rig.Compile(Body + "\nsituations:\n" + situations, cards);

    /// <summary>The same with compartment C a drum of 0.6 m radius and 2 m length that lies along the machine.</summary>
    public static Plan PlanWithDrum(string situations)
    {
        const string Box = "position: { x: 12 m, y: 0 m, z: 0.5 m }\n    shape: prismatic\n    floor area: 2 m^2\n    depth: 1.2 m";
        const string Drum = "position: { x: 12 m, y: 0 m, z: 0.5 m }\n    shape: lying cylinder\n    radius: 0.6 m\n    length: 2 m";
        string body = Body.Replace(Box, Drum, StringComparison.Ordinal);
        return body == Body ? throw new InvalidOperationException("The box was not found.") : Rig.Compile(body + "\nsituations:\n" + situations);
    }

    /// <summary>What has run out of a hole h₀ above which the level stands when it has sunk to it, while q is taken out besides, m³:
    /// A·dh/dt = −k·√h − q, time T = (2A/k²)·(k√h₀ − q·ln(1 + k√h₀/q)), spilled A·h₀ − q·T. Derived.</summary>
    public static double SpilledInTheEnd(double area, double head, double hole, double taken)
    {
        double k = 0.62 * Math.PI * hole * hole / 4 * Math.Sqrt(2 * 9.80665);
        double root = k * Math.Sqrt(head);
        double time = 2 * area / (k * k) * (root - (taken * Math.Log(1 + (root / taken))));
        return (area * head) - (taken * time);
    }
}
