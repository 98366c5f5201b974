namespace Sightglass.World.Tests.Trade;

/// <summary>
/// A tank divided into its four quadrants, each joined to the next through a valve in the wall between them. The gauge shows twice the sum of
/// two diagonally opposite ones as a share of 4 × 960 L. A transfer pump draws from the first and gives to the second.
/// </summary>
internal static class QuadrantMachine
{
    /// <summary>m³ of all four.</summary>
    public const double Capacity = 4 * 0.96;

    public const string Text = """
        book: Quadrants
        edition: "1"
        notice: Invented.
        length: 10 m
        width: 3 m
        places:
          panel: { x: 5 m, y: 2.4 m, z: 0 m, text: Beside the tank. }
        roles:
          hand: { walks: 1.3 m/s, reacts in: 2 s, text: Reads. }
        items:
          front right: { kind: tank, position: { x: 4.4 m, y: 0.5 m, z: 0.4 m }, shape: prismatic, length: 1.2 m, width: 1 m, depth: 0.8 m, ports: { wall: { height: 0 mm } } }
          front left: { kind: tank, position: { x: 4.4 m, y: -0.5 m, z: 0.4 m }, shape: prismatic, length: 1.2 m, width: 1 m, depth: 0.8 m, ports: { wall: { height: 0 mm } } }
          rear right: { kind: tank, position: { x: 5.6 m, y: 0.5 m, z: 0.4 m }, shape: prismatic, length: 1.2 m, width: 1 m, depth: 0.8 m, ports: { wall: { height: 0 mm } } }
          rear left: { kind: tank, position: { x: 5.6 m, y: -0.5 m, z: 0.4 m }, shape: prismatic, length: 1.2 m, width: 1 m, depth: 0.8 m, ports: { wall: { height: 0 mm } } }
          front valve: { kind: hand valve, from: "front right, wall", to: "front left, wall", area: 40 cm^2, usual: open, places: [panel], who: [hand] }
          left valve: { kind: hand valve, from: "front left, wall", to: "rear left, wall", area: 40 cm^2, usual: open, places: [panel], who: [hand] }
          rear valve: { kind: hand valve, from: "rear left, wall", to: "rear right, wall", area: 40 cm^2, usual: open, places: [panel], who: [hand] }
          right valve: { kind: hand valve, from: "rear right, wall", to: "front right, wall", area: 40 cm^2, usual: open, places: [panel], who: [hand] }
          transfer pump: { kind: displacement pump, from: "front right, wall", to: "front left, wall", flow: 50 L/min, slip: 0 %, driven by: transfer switch }
          transfer switch: { kind: switch, usual: "off", places: [panel], who: [hand] }
          gauge: { kind: gauge, shows: 2 * (volume of front right + volume of rear left) / 3840 L, scale: 0 % .. 100 %, resolution: 1 %, places: [panel] }
          fill port: { kind: fill port, from: outside, to: "front right, wall", closes at height: 700 mm, places: [panel], who: [hand] }
        situations:
          standing:
            people: [ { role: hand, at: [panel] } ]
            start:
              volume of front right: 400 L .. 600 L
              volume of front left: 400 L .. 600 L
              volume of rear right: 400 L .. 600 L
              volume of rear left: 400 L .. 600 L
        """;
}
