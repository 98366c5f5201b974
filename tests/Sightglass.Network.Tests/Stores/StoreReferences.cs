using Sightglass.Network.Laws.Common;
using Sightglass.Network.Stores;
using Sightglass.Network.Tests.Probes;

namespace Sightglass.Network.Tests.Stores;

/// <summary>Checks of stores against geometry.</summary>
public static partial class StoreReferences
{
    private const double Density = 840;

    /// <summary>
    /// Depths at the two ends are the height at the centre ± half the rise; the wedge's wetted length is its depth by the tilt. Source: geometry, derived.
    /// </summary>
    public static ReferenceCheck TiltedFloor { get; } = new(
        "A1_11",
        "floor wet if V/(ab) ≥ (a/2)tanθ: h = V/(ab) ± (a/2)tanθ; else wedge √(2V·tanθ/b)",
        new Dictionary<string, double> { ["length"] = 2.4, ["width"] = 1.0, ["tilt"] = Math.Tan(3 * Math.PI / 180), ["volume"] = 1.2 },
        x =>
        {
            double halfRise = PrismaticTank.HalfRise(x["length"], x["tilt"]);
            double Centre(double volume)
            {
                double[] k = PrismaticTank.ParametersOf(x["length"] * x["width"], x["length"], 1.0, Density, x["tilt"]);
                return (StoreProbe.Potential<PrismaticTank>(volume * Density, k) - Physical.Atmosphere) / PrismaticTank.Weight(Density, x["tilt"]);
            }

            double wedge = Centre(x["volume"] / 10) + halfRise;
            return
            [
                new("deeper end", Centre(x["volume"]) + halfRise, 0.56288934, 1e-7),
                new("shallower end", Centre(x["volume"]) - halfRise, 0.43711067, 1e-7),
                new("wedge's depth", wedge, 0.11215109, 1e-7),
                new("wedge's wetted length", wedge / x["tilt"], 2.1399703, 1e-7),
            ];
        });

    /// <summary>Source: circular segment (Perry's; Marks' handbook; from memory).</summary>
    public static ReferenceCheck LyingRoundDip { get; } = new(
        "A1_10",
        "V = L[R²·acos((R−h)/R) − (R−h)√(2Rh−h²)]",
        new Dictionary<string, double> { ["radius"] = 0.6, ["length"] = 2.5 },
        x =>
        {
            double[] k = LyingRoundTank.ParametersOf(x["radius"], x["length"], Density);
            double Height(double volume) => (StoreProbe.Potential<LyingRoundTank>(volume * Density, k) - Physical.Atmosphere) / (Density * Physical.Gravity);
            return
            [
                new("height at 686.02155 L", Height(0.68602155), 0.35, 1e-7),
                new("height at 1413.7167 L", Height(1.4137167), 0.6, 1e-7),
                new("full", LyingRoundTank.Volume(x["radius"], x["length"]), 2.8274334, 1e-7),
            ];
        });
}
