using Sightglass.Plant.Plans;
using Sightglass.World.Tests.Trade;

namespace Sightglass.World.Tests.Electric;

/// <summary>A machine with a battery, a charger, a starter, a headlight behind a breaker and a contactor, and an engine with enough fuel.</summary>
internal static class BatteryMachine
{
    public const string Text = """
        book: Lights
        length: 20 m
        places: { cab: { x: 5 m, y: 2.4 m } }
        roles: { hand: { walks: 1.3 m/s } }
        situations:
          standing: { people: [ { role: hand, at: cab } ], start: { engine: stopped } }
          low: { people: [ { role: hand, at: cab } ], start: { engine: stopped, charge of battery: 30 % } }
          running: { people: [ { role: hand, at: cab } ], start: { engine: running } }
        items:
          throttle: { kind: handle, positions: [idle, notch 1], who: [hand], places: [cab] }
          tank: { kind: tank, position: { x: 2 m, y: 0 m, z: 1 m }, floor area: 2 m^2, depth: 1 m, ports: { low: { height: 10 mm } } }
          rail: { kind: fuel line, volume: 2 L, position: { x: 2 m, y: 0 m, z: 1 m } }
          pump: { kind: displacement pump, from: "tank, low", to: rail, flow: 15 L/min }
          regulator: { kind: orifice, from: rail, to: "tank", diameter: 4 mm }
          engine: { kind: engine, from: rail, to: outside, throttle: throttle, consumption: { idle: 19 L/h, notch 1: 40 L/h }, who: [hand], places: [cab] }
          minus: { kind: wire }
          battery plus: { kind: wire }
          plus: { kind: wire }
          lit plus: { kind: wire }
          lamp plus: { kind: wire }
          coil plus: { kind: wire }
          battery: { kind: battery, from: minus, to: battery plus, cells: 32, capacity: 420 Ah, inner resistance: 30 mOhm }
          battery switch: { kind: knife switch, from: battery plus, to: plus, who: [hand], places: [cab] }
          charger: { kind: charger, from: minus, to: plus, volts: 74 V, full current: 150 A, driven by: engine }
          starter: { kind: starter, from: plus, to: minus, turns: engine, cranks while: start of start switch, resistance: 41 mOhm, needs: 30 V, fires after: 6 s }
          start switch: { kind: handle, positions: [off, start], who: [hand], places: [cab] }
          light switch: { kind: switch, who: [hand], places: [cab] }
          coil contact: { kind: contact, from: plus, to: coil plus, closed while: on of light switch }
          light contactor: { kind: contactor, from: coil plus, to: minus, picks at: 40 V, drops at: 20 V }
          light breaker: { kind: breaker, from: plus, to: lit plus, rating: 10 A, who: [hand], places: [cab] }
          light contact: { kind: contact, from: lit plus, to: lamp plus, coil: light contactor }
          headlight: { kind: electric lamp, from: lamp plus, to: minus, power: 400 W, rated voltage: 74 V, places: [cab] }
          ground lamp, plus: { kind: electric lamp, from: plus, to: frame, power: 20 W, rated voltage: 74 V, places: [cab] }
          ground lamp, minus: { kind: electric lamp, from: frame, to: minus, power: 20 W, rated voltage: 74 V, places: [cab] }
          voltmeter: { kind: gauge, shows: voltage of plus - voltage of minus, scale: 0 V .. 100 V, resolution: 1 V, places: [cab] }
          ammeter: { kind: gauge, shows: 0 A - current of battery, scale: -1000 A .. 300 A, resolution: 10 A, places: [cab] }
        """;

    private static readonly Lazy<Plan> s_plan = new(() => Rig.Compile(Text));

    public static Plan Plan => s_plan.Value;
}
