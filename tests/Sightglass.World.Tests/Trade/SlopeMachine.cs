namespace Sightglass.World.Tests.Trade;

/// <summary>A tank with a floor of 2.4 m by 1 m and a glass at each end, on a grade of 3°.</summary>
internal static class SlopeMachine
{
    public const string Text = """
        book: Slope
        edition: "1"
        notice: Invented.
        length: 10 m
        width: 3 m
        places:
          panel: { x: 5 m, y: 2.4 m, z: 0 m, text: Beside the tank. }
        roles:
          hand: { walks: 1.3 m/s, reacts in: 2 s, text: Reads. }
        items:
          tank: { kind: tank, position: { x: 5 m, y: 0 m, z: 1 m }, shape: prismatic, length: 2.4 m, width: 1 m, depth: 1 m }
          front glass: { kind: sight glass, of: tank, bottom: 0 mm, top: 0.95 m, scale: 0 mm .. 950 mm, resolution: 1 mm, position: { x: 3.8 m, y: 0 m, z: 1.5 m }, places: [panel], label: Front }
          rear glass: { kind: sight glass, of: tank, bottom: 0 mm, top: 0.95 m, scale: 0 mm .. 950 mm, resolution: 1 mm, position: { x: 6.2 m, y: 0 m, z: 1.5 m }, places: [panel], label: Rear }
        situations:
          deep:
            people: [ { role: hand, at: [panel] } ]
            start: { volume of tank: 1200 L, grade: 5.2407779 % }
          shallow:
            people: [ { role: hand, at: [panel] } ]
            start: { volume of tank: 120 L, grade: 5.2407779 % }
        """;
}
