using Sightglass.Plant.Plans;
using Sightglass.World.Tests.Trade;

namespace Sightglass.World.Tests.RunningGear;

/// <summary>Small books of things that stand on springs.</summary>
internal static class GearMachine
{
    public const double Gravity = 9.80665;

    public const string Heads = """
        book: Gear
        length: 20 m
        places: { pit: { x: 5 m, y: 2.4 m } }
        roles: { hand: { walks: 1.3 m/s } }
        situations:
          standing: { people: [ { role: hand, at: pit } ] }
        items:

        """;

    /// <summary>A body on two trucks of two axles, the same at both ends and both sides, with a tank on each side.</summary>
    public static readonly string Alike = Heads + """
          tank, right: { kind: tank, lies on: body, position: { x: 10 m, y: 1 m, z: 1 m }, floor area: 4 m^2, depth: 1 m, ports: { low: { height: 0 mm } } }
          tank, left: { kind: tank, lies on: body, position: { x: 10 m, y: -1 m, z: 1 m }, floor area: 4 m^2, depth: 1 m, ports: { low: { height: 0 mm } } }
          drain: { kind: drain cock, from: "tank, right, low", to: outside, area: 20 cm^2, usual: closed, who: [hand], places: [pit] }
          box: { kind: carried load, lies on: front frame, full mass: 300 kg, usual fill: 0 %, position: { x: 4 m, y: 1 m, z: 1 m } }
          body: { kind: body, mass: 70 t, position: { x: 10 m, y: 0 m, z: 2 m } }
          front frame: { kind: truck frame, mass: 8 t, position: { x: 4 m, y: 0 m, z: 0.7 m } }
          rear frame: { kind: truck frame, mass: 8 t, position: { x: 16 m, y: 0 m, z: 0.7 m } }

        """ + string.Concat(new[] { (1, 2.7), (2, 5.3), (3, 14.7), (4, 17.3) }.Select(a => Axle(a.Item1, a.Item2))) + Spring("s1", "body", "front frame", 4, 1, 2e6) + Spring("s2", "body", "front frame", 4, -1, 2e6)
        + Spring("s3", "body", "rear frame", 16, 1, 2e6) + Spring("s4", "body", "rear frame", 16, -1, 2e6);

    private static readonly Lazy<Plan> s_alike = new(() => Rig.Compile(Alike));

    public static Plan AlikePlan => s_alike.Value;

    /// <summary>A spring that never comes to its end under what stands on it here.</summary>
    /// <param name="stiffness">N/m.</param>
    public static string Spring(string name, string carries, string on, double x, double y, double stiffness, string more = "") => FormattableString.Invariant(
        $"  {name}: {{ kind: spring, carries: {carries}, stands on: {on}, stiffness: {stiffness} N/m, free height: 1 m, position: {{ x: {x} m, y: {y} m, z: 1 m }}, scale: 0 mm .. 1100 mm, resolution: 1 mm, places: [pit], for: Carries., normal: Whole.{more} }}\n");

    /// <summary>What an axle's wheels press, N.</summary>
    public static double Axle(this Rig rig, double at, string axle) => (rig.At(at, $"right wheel load of {axle}") + rig.At(at, $"left wheel load of {axle}")) * Gravity;

    /// <summary>kg at the wheels, from the front, the right one first.</summary>
    public static double[] Wheels(this Rig rig, double at, params ReadOnlySpan<string> axles)
    {
        List<double> all = [];
        foreach (string axle in axles)
        {
            all.AddRange(rig.At(at, $"right wheel load of {axle}"), rig.At(at, $"left wheel load of {axle}"));
        }

        return [.. all];
    }

    private static string Axle(int number, double x)
    {
        string frame = number < 3 ? "front frame" : "rear frame";
        return FormattableString.Invariant($"  a{number}: {{ kind: axle, mass: 4 t, position: {{ x: {x} m, y: 0 m, z: 0.5 m }} }}\n")
            + Spring($"p{number} right", frame, $"a{number}", x, 1, 1.2e6) + Spring($"p{number} left", frame, $"a{number}", x, -1, 1.2e6);
    }
}
