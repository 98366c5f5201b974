using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;

namespace Sightglass.Network.Laws.Liquid;

/// <summary>
/// A round pipe with fittings: Δp = (f·L/D + ΣK)·ρV²/2, solved for the speed V. Laminar f = 64/Re up to Re 2000 (less where needed, see
/// <see cref="PipeSheet"/>), Colebrook from Re 4000, between them a cubic in √Δp that joins both in value and slope and rises.
/// Sources: Darcy–Weisbach, Colebrook (White, Fluid Mechanics, ch. 6; Crane TP-410, ch. 1; from memory).
/// </summary>
/// <remarks>
/// Laminar in closed form. Turbulent: with S = √(2Δp/ρ) and X = 1/√f, X = −2·log₁₀(r + (2.51·ν/DS)·√(L/D + K·X²)), which hardly feels its own right-hand X; two
/// Newton steps from X = 7 leave an error below 5e-6 in X (Re 4000 to 1e7, ΣK·D/L up to 6; none without fittings), so in V. Derivatives are those of the
/// exact solution. (Kept in parts for the compiler's sake, as <see cref="Ends.Through{T, TFrom, TLaw, TTo}"/>.) Parameters: <see cref="PipeSheet"/>. No inputs.
/// </remarks>
public readonly struct LiquidPipe : ILaw
{
    /// <summary>Where the static head at the first end stands in the sheet: what a change of tilt changes.</summary>
    public const int OffsetParameter = PipeSheet.Offset;

    private const double TwoPerLn10 = 0.8685889638065037;

    private const double FirstGuess = 7;

    public static int Potentials => 2;

    public static int Flows => 1;

    public static int Parameters => PipeSheet.Length;

    public static int Inputs => 0;

    [MethodImpl(MethodImplOptions.NoInlining)]
    public static void Evaluate<T>(ref T p, ref T k, ref T u, ref T q, ref T dq)
        where T : struct, IReal<T>
    {
        T difference = p + Unsafe.Add(ref k, PipeSheet.Offset) - Unsafe.Add(ref p, 1);
        T x = T.Abs(difference);
        T laminar = Laminar(x, ref k, out T laminarSlope);
        T between = Between(x, ref k, out T betweenSlope);
        T turbulent = Turbulent(x, ref k, out T turbulentSlope);
        T isLaminar = T.Less(x, Unsafe.Add(ref k, PipeSheet.LaminarBelow));
        T isTurbulent = T.LessOrEqual(Unsafe.Add(ref k, PipeSheet.TurbulentFrom), x);
        T speed = T.Select(isLaminar, laminar, T.Select(isTurbulent, turbulent, between));
        T slope = T.Select(isLaminar, laminarSlope, T.Select(isTurbulent, turbulentSlope, betweenSlope));
        T perSpeed = Unsafe.Add(ref k, PipeSheet.FlowPerSpeed);
        T flow = perSpeed * speed;
        q = T.Select(T.Less(difference, T.Of(0)), -flow, flow);
        T d = perSpeed * slope;
        dq = d;
        Unsafe.Add(ref dq, 1) = -d;
    }

    /// <inheritdoc cref="PipeSheet.Of"/>
    public static double[] ParametersOf(
        double diameter, double length, double roughness, double fittings, double density, double viscosity, double offset = 0) =>
        PipeSheet.Of(diameter, length, roughness, fittings, density, viscosity, offset);

    /// <summary>V from Δp = a·V + b·V² [m/s], and its slope.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T Laminar<T>(T x, ref T k, out T slope)
        where T : struct, IReal<T>
    {
        T root = T.Sqrt(Unsafe.Add(ref k, PipeSheet.LinearSquared) + (Unsafe.Add(ref k, PipeSheet.FourQuadratic) * x));
        slope = T.Of(1) / root;
        return (x + x) / (Unsafe.Add(ref k, PipeSheet.Linear) + root);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T Between<T>(T x, ref T k, out T slope)
        where T : struct, IReal<T>
    {
        T root = T.Sqrt(T.Max(x, Unsafe.Add(ref k, PipeSheet.LaminarBelow)));
        T s = root - Unsafe.Add(ref k, PipeSheet.Root);
        ref T cubic = ref Unsafe.Add(ref k, PipeSheet.Cubic);
        T first = Unsafe.Add(ref cubic, 1), second = Unsafe.Add(ref cubic, 2), third = Unsafe.Add(ref cubic, 3);
        slope = (first + (s * ((second + second) + (T.Of(3) * third * s)))) * (T.Of(0.5) / root);
        return cubic + (s * (first + (s * (second + (s * third)))));
    }

    /// <summary>Colebrook's speed at a pressure difference of at least where turbulence begins.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    internal static T Turbulent<T>(T x, ref T k, out T slope)
        where T : struct, IReal<T>
    {
        T rough = Unsafe.Add(ref k, PipeSheet.Rough);
        T lengths = Unsafe.Add(ref k, PipeSheet.Lengths);
        T fittings = Unsafe.Add(ref k, PipeSheet.Fittings);
        T driven = T.Sqrt(T.Max(x, Unsafe.Add(ref k, PipeSheet.TurbulentFrom)) * Unsafe.Add(ref k, PipeSheet.TwoPerDensity));
        T perDriven = T.Of(1) / driven;
        T smooth = Unsafe.Add(ref k, PipeSheet.Smooth) * perDriven;
        T f = T.Of(FirstGuess);
        f = Newton(f, rough, smooth, lengths, fittings);
        f = Newton(f, rough, smooth, lengths, fittings);
        T loss = T.Sqrt(lengths + (fittings * f * f));
        T inside = rough + (smooth * loss);
        T perInside = T.Of(TwoPerLn10) * smooth / inside;
        T perLoss = T.Of(1) / loss;
        T growth = perInside * loss / (T.Of(1) + (perInside * fittings * f * perLoss));
        T perSpeed = perLoss * (f + (lengths * perLoss * perLoss * growth));
        slope = perSpeed * perDriven * (T.Of(0.5) * Unsafe.Add(ref k, PipeSheet.TwoPerDensity));
        return driven * f * perLoss;
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static T Newton<T>(T f, T rough, T smooth, T lengths, T fittings)
        where T : struct, IReal<T>
    {
        T loss = T.Sqrt(lengths + (fittings * f * f));
        T inside = rough + (smooth * loss);
        T residual = f + (T.Of(TwoPerLn10) * Portable.Log(inside));
        T slope = T.Of(1) + (T.Of(TwoPerLn10) * smooth * fittings * f / (loss * inside));
        return f - (residual / slope);
    }
}
