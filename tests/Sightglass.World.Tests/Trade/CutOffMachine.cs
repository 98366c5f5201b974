namespace Sightglass.World.Tests.Trade;

/// <summary>
/// A cut-off valve with 2 L behind it that the engine can use: a small vented bowl from which the pump draws and to which the engine's return
/// comes back. What stands below the bowl's pickup counts for nothing.
/// </summary>
internal static class CutOffMachine
{
    public const string Text = """
        book: Cut-off
        edition: "1"
        notice: Invented.
        length: 10 m
        width: 3 m
        places:
          panel: { x: 5 m, y: 2.4 m, z: 0 m, text: Beside the tank. }
        roles:
          hand: { walks: 1.3 m/s, reacts in: 2 s, text: Works the valves. }
        systems:
          fuel: { medium: fuel, alive: yes, text: The fuel. }
        items:
          tank: { kind: tank, system: fuel, position: { x: 5 m, y: 0 m, z: 1 m }, shape: prismatic, floor area: 2 m^2, depth: 1 m, ports: { outlet: { height: 50 mm } } }
          bowl: { kind: tank, system: fuel, position: { x: 5 m, y: 1 m, z: 1.3 m }, shape: prismatic, floor area: 50 cm^2, depth: 0.6 m, ports: { inlet: { height: 0.1 m }, pickup: { height: 50 mm }, return: { height: 0.55 m } } }
          cut-off: { kind: cut-off valve, system: fuel, from: "tank, outlet", to: "bowl, inlet", area: 5 cm^2, tripped by: [button] }
          button: { kind: push button, system: fuel, trips: [cut-off], places: [panel], who: [hand], label: Button }
          suction: { kind: fuel line, system: fuel, volume: 0.05 L, position: { x: 5 m, y: 1 m, z: 1.3 m } }
          outlet: { kind: orifice, system: fuel, from: "bowl, pickup", to: suction, area: 5 cm^2 }
          rail: { kind: fuel line, system: fuel, volume: 0.05 L, position: { x: 5 m, y: 0.5 m, z: 1.3 m } }
          pump: { kind: displacement pump, system: fuel, from: suction, to: rail, flow: 9 L/min, slip: 0 % }
          regulator: { kind: check valve, system: fuel, from: rail, to: "bowl, return", area: 0.5 cm^2, opens at: 30 psi }
          engine: { kind: engine, system: fuel, from: rail, to: outside, consumption: { idle: 0.5 L/min, full: 8.5 L/min }, throttle: throttle, after: 0.5 s, usual: running, places: [panel], who: [hand], label: Engine }
          throttle: { kind: handle, system: fuel, positions: [idle, full], usual: idle, places: [panel], who: [hand], takes: 1 s, label: Throttle }
        situations:
          standing:
            people: [ { role: hand, at: [panel] } ]
            start: { volume of tank: 1000 L, volume of bowl: 2.25 L }
        """;
}
