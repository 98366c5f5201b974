using Sightglass.Basics.Numbers;

namespace Sightglass.Network.Laws.Liquid;

/// <summary>The sheet of a <see cref="LiquidPipe"/>: where its numbers stand, and how they follow from the pipe.</summary>
public static class PipeSheet
{
    /// <summary>a in Δp = a·V + b·V² of laminar flow: 32·ρν·L/D² [Pa·s/m].</summary>
    internal const int Linear = 0;

    internal const int LinearSquared = 1;

    /// <summary>4·b = 2·ρ·ΣK [Pa·s²/m²].</summary>
    internal const int FourQuadratic = 2;

    /// <summary>Δp where laminar flow ends [Pa].</summary>
    internal const int LaminarBelow = 3;

    /// <summary>Its root [√Pa].</summary>
    internal const int Root = 4;

    /// <summary>Four coefficients of V over √Δp − <see cref="Root"/> between laminar and turbulent.</summary>
    internal const int Cubic = 5;

    /// <summary>Δp where Colebrook begins [Pa].</summary>
    internal const int TurbulentFrom = 9;

    /// <summary>ε/3.7D.</summary>
    internal const int Rough = 10;

    /// <summary>2.51·ν/D [m/s].</summary>
    internal const int Smooth = 11;

    /// <summary>L/D.</summary>
    internal const int Lengths = 12;

    /// <summary>ΣK.</summary>
    internal const int Fittings = 13;

    internal const int TwoPerDensity = 14;

    /// <summary>ρ·πD²/4 [kg/m].</summary>
    internal const int FlowPerSpeed = 15;

    internal const int Offset = 16;

    internal const int Length = 17;

    private const double EndOfLaminar = 2000;

    private const double StartOfTurbulent = 4000;

    private const double Step = 50;

    /// <summary>The sheet of a pipe.</summary>
    /// <param name="diameter">m.</param>
    /// <param name="length">m.</param>
    /// <param name="roughness">Of the wall, m, up to a twentieth of the diameter: 0.045 mm for commercial steel.</param>
    /// <param name="fittings">ΣK of bends, tees, ends.</param>
    /// <param name="density">kg/m³.</param>
    /// <param name="viscosity">Kinematic, m²/s.</param>
    /// <param name="offset">Pa added at the first end: ρ·g times its height over the second one.</param>
    /// <remarks>
    /// Laminar flow ends at Re 2000 where a cubic from there to Re 4000 rises all the way, else (in rough pipes) as far below as it takes: Re 1550 at a roughness of
    /// a twentieth of the diameter.
    /// </remarks>
    public static double[] Of(
        double diameter, double length, double roughness, double fittings, double density, double viscosity, double offset = 0)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(diameter);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(length);
        ArgumentOutOfRangeException.ThrowIfNegative(roughness);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(roughness, diameter / 20);
        ArgumentOutOfRangeException.ThrowIfNegative(fittings);
        double[] k = new double[Length];
        k[Linear] = 32 * density * viscosity * length / (diameter * diameter);
        k[LinearSquared] = k[Linear] * k[Linear];
        k[FourQuadratic] = 2 * density * fittings;
        k[Rough] = roughness / (3.7 * diameter);
        k[Smooth] = 2.51 * viscosity / diameter;
        k[Lengths] = length / diameter;
        k[Fittings] = fittings;
        k[TwoPerDensity] = 2 / density;
        k[FlowPerSpeed] = density * Math.PI / 4 * diameter * diameter;
        k[Offset] = offset;
        Join(k, viscosity / diameter, roughness / diameter);
        return k;
    }

    /// <summary>Sets where laminar flow ends and turbulent flow begins, and the cubic between.</summary>
    /// <param name="speedPerReynolds">ν/D, m/s.</param>
    private static void Join(double[] k, double speedPerReynolds, double relativeRoughness)
    {
        double speed = StartOfTurbulent * speedPerReynolds;
        double loss = (FrictionFactor.Colebrook(StartOfTurbulent, relativeRoughness) * k[Lengths]) + k[Fittings];
        k[TurbulentFrom] = loss * speed * speed / k[TwoPerDensity];
        Scalar[] row = [.. k.Select(v => new Scalar(v))];
        double endSpeed = LiquidPipe.Turbulent(new Scalar(k[TurbulentFrom]), ref row[0], out Scalar slope).V;
        double endRoot = Math.Sqrt(k[TurbulentFrom]);
        double endSlope = slope.V * 2 * endRoot;
        double reynolds = EndOfLaminar;
        while (!Rises(k, reynolds * speedPerReynolds, endRoot, endSpeed, endSlope)) reynolds -= Step;
    }

    /// <summary>Sets the cubic for laminar flow up to a speed, and says whether it rises: by the ellipse of Fritsch and Carlson 1980 (from memory).</summary>
    private static bool Rises(double[] k, double speed, double endRoot, double endSpeed, double endSlope)
    {
        k[LaminarBelow] = (k[Linear] * speed) + (k[FourQuadratic] / 4 * speed * speed);
        k[Root] = Math.Sqrt(k[LaminarBelow]);
        double startSlope = 2 * k[Root] / Math.Sqrt(k[LinearSquared] + (k[FourQuadratic] * k[LaminarBelow]));
        double width = endRoot - k[Root];
        double chord = (endSpeed - speed) / width;
        k[Cubic] = speed;
        k[Cubic + 1] = startSlope;
        k[Cubic + 2] = ((3 * chord) - (2 * startSlope) - endSlope) / width;
        k[Cubic + 3] = (startSlope + endSlope - (2 * chord)) / (width * width);
        double a = startSlope / chord, b = endSlope / chord;
        return width > 0 && (a + (2 * b) <= 3 || (2 * a) + b <= 3 || a - (((2 * a) + b - 3) * ((2 * a) + b - 3) / (3 * (a + b - 2))) > 0.05);
    }
}
