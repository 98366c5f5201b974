using Sightglass.Basics.Diagnostics;
using Sightglass.Book;
using Sightglass.Book.Model;
using Sightglass.Plant.Kinds;
using Sightglass.Plant.Plans;

namespace Sightglass.World.Tests.Electric;

/// <summary>Two units back to back over a control line: four governor wires, engine run, generator field, forward and reverse, which change places. Pins are invented.</summary>
internal static class CoupledUnits
{
    public const string Text = """
        book: Units
        length: 20 m
        width: 3 m
        places: { cab: { x: 5 m, y: 0 m }, rear: { x: 19 m, y: 2.4 m } }
        roles: { hand: { walks: 1.3 m/s } }
        trains: { pair: { text: Back to back., vehicles: [this machine, { vehicle: another machine, turned: yes }] } }
        situations: { coupled: { train: pair, people: [ { role: hand, at: [cab] } ], start: { control breaker of unit 2: "off" } } }
        items:
          throttle: { kind: handle, positions: [stop, idle, notch 1, notch 2, notch 3, notch 4, notch 5, notch 6, notch 7, notch 8], usual: idle, who: [hand], places: [cab] }
          reverser: { kind: handle, positions: [reverse, centre, forward], usual: centre, who: [hand], places: [cab] }
          control breaker: { kind: switch, usual: "on", who: [hand], places: [cab] }
          minus: { kind: wire }
          plus: { kind: wire }
          feed: { kind: wire }
          governor A: { kind: wire }
          governor B: { kind: wire }
          governor C: { kind: wire }
          governor D: { kind: wire }
          engine run: { kind: wire }
          generator field: { kind: wire }
          forward wire: { kind: wire }
          reverse wire: { kind: wire }
          battery: { kind: battery, from: minus, to: plus, cells: 32, capacity: 420 Ah }
          feed contact: { kind: contact, from: plus, to: feed, closed while: on of control breaker }
          contact A: { kind: contact, from: feed, to: governor A, closed while: notch 2 of throttle or notch 4 of throttle or notch 6 of throttle or notch 8 of throttle }
          contact B: { kind: contact, from: feed, to: governor B, closed while: notch 5 of throttle or notch 6 of throttle or notch 7 of throttle or notch 8 of throttle }
          contact C: { kind: contact, from: feed, to: governor C, closed while: notch 3 of throttle or notch 4 of throttle or notch 5 of throttle or notch 6 of throttle or notch 7 of throttle or notch 8 of throttle }
          contact D: { kind: contact, from: feed, to: governor D, closed while: stop of throttle or notch 5 of throttle or notch 6 of throttle }
          run contact: { kind: contact, from: feed, to: engine run, closed while: not idle of throttle and not stop of throttle }
          field contact: { kind: contact, from: feed, to: generator field, closed while: not idle of throttle and not stop of throttle }
          forward contact: { kind: contact, from: feed, to: forward wire, closed while: forward of reverser }
          reverse contact: { kind: contact, from: feed, to: reverse wire, closed while: reverse of reverser }
          decoder: { kind: notch decoder, governor wires: [governor A, governor B, governor C, governor D], minus: minus, run wire: engine run, codes: { stop: 8, idle: 0, notch 2: 1, notch 3: 4, notch 4: 5, notch 5: 14, notch 6: 15, notch 7: 6, notch 8: 7 } }
          field relay: { kind: contactor, from: generator field, to: minus, picks at: 40 V, drops at: 20 V }
          forward relay: { kind: contactor, from: forward wire, to: minus, picks at: 40 V, drops at: 20 V }
          reverse relay: { kind: contactor, from: reverse wire, to: minus, picks at: 40 V, drops at: 20 V }
          tank: { kind: tank, position: { x: 2 m, y: 0 m, z: 1 m }, floor area: 2 m^2, depth: 1 m, ports: { low: { height: 10 mm } } }
          rail: { kind: fuel line, volume: 2 L, position: { x: 2 m, y: 0 m, z: 1 m } }
          pump: { kind: displacement pump, from: "tank, low", to: rail, flow: 15 L/min }
          regulator: { kind: orifice, from: rail, to: tank, diameter: 4 mm }
          engine: { kind: engine, from: rail, to: outside, throttle: decoder, usual: running, consumption: { stop: 0 L/h, idle: 20 L/h, notch 1: 20 L/h, notch 2: 100 L/h, notch 3: 150 L/h, notch 4: 220 L/h, notch 5: 310 L/h, notch 6: 400 L/h, notch 7: 520 L/h, notch 8: 650 L/h }, who: [hand], places: [cab] }
          rear receptacle:
            kind: receptacle
            pins: { 3: governor D, 4: minus, 6: generator field, 7: governor C, 8: forward wire, 9: reverse wire, 12: governor B, 15: governor A, 16: engine run }
            jumper crosses: 8 with 9
            who: [hand]
            places: [rear]
        ends: { rear: { faces: rear, joins: { control: rear receptacle } } }
        """;

    private static readonly Lazy<Plan> s_plan = new(Compile);

    public static Plan Plan => s_plan.Value;

    private static Plan Compile()
    {
        DiagnosticList found = new();
        ClassBook? book = BookReader.Read([new SourceText("book.yaml", Text)], [], KindLibrary.Catalog, found);
        Assert.True(book is not null && !found.HasErrors, string.Join('\n', found));
        Plan? plan = PlanCompiler.Compile(book.Coupled("pair"), found);
        Assert.True(plan is not null, string.Join('\n', found));
        return plan;
    }
}
