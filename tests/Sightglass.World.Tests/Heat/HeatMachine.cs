using Sightglass.Plant.Plans;
using Sightglass.World.Tests.Trade;

namespace Sightglass.World.Tests.Heat;

/// <summary>A block in the air, two masses that even out, a radiator behind a screen and a shutter, and two grids: one with a fan, one whose blower gets the grid's own current.</summary>
internal static class HeatMachine
{
    public const string Text = """
        book: Warm things
        length: 20 m
        places: { cab: { x: 5 m, y: 2.4 m } }
        roles: { hand: { walks: 1.3 m/s } }
        situations:
          hot block: { people: [ { role: hand, at: cab } ], start: { ambient temperature: 10 degC, temperature of block: 95 degC, temperature of left: 90 degC, temperature of water: 88 degC } }
          hot grids: { people: [ { role: hand, at: cab } ], start: { ambient temperature: 20 degC, temperature of grid: 485 degC, temperature of own grid: 485 degC } }
          hot day: { people: [ { role: hand, at: cab } ], start: { ambient temperature: 32 degC, temperature of water: 88 degC } }
        items:
          heater switch: { kind: switch, who: [hand], places: [cab] }
          heater relay: { kind: relay, picks up when: on of heater switch, drops when: off of heater switch }
          block: { kind: thermal mass, heat capacity: 500 kJ/K }
          casing: { kind: heat exchanger, from: block, to: outside, conductance: 250 W/K }
          heater: { kind: heat source, to: block, gives: 12 kW * told of heater relay }
          left: { kind: thermal mass, heat capacity: 2 kJ/K }
          right: { kind: thermal mass, heat capacity: 3 kJ/K }
          joint: { kind: heat exchanger, from: left, to: right, conductance: 6 W/K }
          load switch: { kind: switch, who: [hand], places: [cab] }
          load relay: { kind: relay, picks up when: on of load switch, drops when: off of load switch }
          fan switch: { kind: switch, usual: "on", who: [hand], places: [cab] }
          grid: { kind: thermal mass, heat capacity: 41.4 kJ/K }
          grid heat: { kind: heat source, to: grid, gives: 210.7 kW * told of load relay * (1 + 0.0003 * (temperature of grid - ambient temperature) / 1 K), band: 0.2 kW }
          grid fan: { kind: fan, driven by: fan switch }
          grid air: { kind: heat exchanger, from: grid, to: outside, conductance: 260 W/K, still: 10 %, moved by: [grid fan] }
          own grid: { kind: thermal mass, heat capacity: 41.4 kJ/K }
          own grid heat: { kind: heat source, to: own grid, gives: 210.7 kW * told of load relay }
          own blower: { kind: fan, switched by: load relay }
          own grid air: { kind: heat exchanger, from: own grid, to: outside, conductance: 260 W/K, still: 10 %, moved by: [own blower] }
          water: { kind: thermal mass, heat capacity: 10 MJ/K }
          thermostat: { kind: relay, picks up when: temperature of water > 80 degC, drops when: temperature of water < 74 degC }
          shutter: { kind: shutter, opened by: thermostat, who: [hand], places: [cab] }
          body door: { kind: handle, positions: [shut, open], who: [hand], places: [cab] }
          screen: { kind: screen, besides: body door, besides opens: 60 %, who: [hand], places: [cab] }
          first fan: { kind: fan, switched by: thermostat }
          second fan: { kind: fan, switched by: thermostat }
          radiator: { kind: heat exchanger, from: water, to: outside, conductance: 9487.3706 W/K, still: 0 %, moved by: [first fan, second fan], through: [screen, shutter] }
        """;

    private static readonly Lazy<Plan> s_plan = new(() => Rig.Compile(Text));

    public static Plan Plan => s_plan.Value;
}
