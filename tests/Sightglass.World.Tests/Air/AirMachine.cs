using Sightglass.Plant.Plans;
using Sightglass.World.Tests.Trade;

namespace Sightglass.World.Tests.Air;

/// <summary>The air of one invented unit: made, dried, stored, let into a brake pipe, put into cylinders, leaking where a fault says so.</summary>
internal static class AirMachine
{
    private static readonly Lazy<Plan> s_plan = new(() => Rig.Compile(Text));

    public static Plan Plan => s_plan.Value;

    private const string Text = """
        book: Air of a unit
        length: 20 m
        roles: { hand: { walks: 1.3 m/s } }
        places: { cab: { x: 2 m, y: 2.4 m } }
        items:
          engine switch: { kind: switch, usual: on, who: [hand], places: [cab] }
          governor: { kind: governor, senses: second main reservoir, cuts in: 130 psi, cuts out: 140 psi }
          compressor: { kind: compressor, to: first main reservoir, displacement: 150 ft^3/min, driven by: engine switch, loaded by: governor }
          first main reservoir: { kind: reservoir, volume: 450 L, exponent: 1.2, start pressure: 135 psi }
          safety valve: { kind: safety valve, from: first main reservoir, diameter: 20 mm, opens at: 150 psi }
          first drain: { kind: drain cock, from: first main reservoir, to: outside, diameter: 8 mm, who: [hand], places: [cab] }
          check valve: { kind: check valve, from: first main reservoir, to: dryer outlet, diameter: 25 mm }
          dryer outlet: { kind: air line, volume: 5 L, start pressure: 135 psi }
          purge: { kind: actuated valve, from: dryer outlet, to: outside, opened by: governor, diameter: 3 mm }
          final filter: { kind: filter, from: dryer outlet, to: second main reservoir, flow: 150 ft^3/min, drop: 2 psi }
          second main reservoir: { kind: reservoir, volume: 450 L, start pressure: 135 psi }
          main reservoir cock: { kind: cutout cock, from: second main reservoir, to: supply line, diameter: 25 mm, vent diameter: 10 mm, who: [hand], places: [cab] }
          supply line: { kind: air line, length: 8 m, diameter: 25 mm, start pressure: 135 psi }
          brake handle: { kind: handle, positions: [release, minimum, half, full service, emergency], who: [hand], places: [cab] }
          cut-out handle: { kind: handle, positions: [in, out, trailing], who: [hand], places: [cab] }
          equalising reservoir: { kind: reservoir, volume: 4 L, start pressure: 110 psi }
          handle valve: { kind: regulating valve, from: supply line, to: equalising reservoir, diameter: 2 mm, exhaust diameter: 1.6 mm, set by: brake handle, pressures: { release: 110 psi, minimum: 103 psi, half: 97 psi, full service: 84 psi, emergency: 0 psi } }
          relay: { kind: relay valve, from: supply line, to: brake pipe, follows: equalising reservoir, diameter: 6 mm, exhaust diameter: 8 mm, cut out by: cut-out handle }
          brake pipe: { kind: air line, length: 20 m, diameter: 32 mm, start pressure: 110 psi }
          pipe to the rear: { kind: pipe, from: brake pipe, to: rear of the brake pipe, length: 20 m, diameter: 32 mm }
          rear of the brake pipe: { kind: air line, length: 20 m, diameter: 32 mm, start pressure: 110 psi }
          rear angle cock: { kind: hand valve, from: rear of the brake pipe, to: outside, diameter: 25 mm, who: [hand], places: [cab] }
          vent valve: { kind: vent valve, from: rear of the brake pipe, diameter: 25 mm }
          brake reservoir check: { kind: check valve, from: supply line, to: brake reservoir, diameter: 5 mm }
          brake reservoir: { kind: reservoir, volume: 80 L, start pressure: 135 psi }
          control valve: { kind: control valve, from: brake reservoir, to: cylinder line, senses: brake pipe, diameter: 6 mm, exhaust diameter: 6 mm }
          cylinder line: { kind: air line, volume: 2 L }
          front truck cock: { kind: cutout cock, from: cylinder line, to: front cylinder, diameter: 12 mm, vent diameter: 5 mm, who: [hand], places: [cab] }
          front cylinder: { kind: brake cylinder, diameter: 250 mm, travel: 80 mm }
          rear truck cock: { kind: cutout cock, from: cylinder line, to: rear cylinder, diameter: 12 mm, vent diameter: 5 mm, who: [hand], places: [cab] }
          rear cylinder: { kind: brake cylinder, diameter: 250 mm, travel: 80 mm }
          coach valve: { kind: control valve, from: coach reservoir, to: coach cylinder, senses: rear of the brake pipe, diameter: 4 mm, exhaust diameter: 3 mm, release: direct }
          coach reservoir: { kind: reservoir, volume: 40 L, start pressure: 110 psi }
          coach cylinder: { kind: brake cylinder, diameter: 250 mm, travel: 150 mm }
        situations:
          charged: { text: Everything charged and released. }
          empty:
            text: From nothing, the engine just started.
            start:
              pressure of first main reservoir: 0 psi
              pressure of dryer outlet: 0 psi
              pressure of second main reservoir: 0 psi
              pressure of supply line: 0 psi
              pressure of equalising reservoir: 0 psi
              pressure of brake pipe: 0 psi
              pressure of rear of the brake pipe: 0 psi
              pressure of brake reservoir: 0 psi
              pressure of coach reservoir: 0 psi
        """;
}
