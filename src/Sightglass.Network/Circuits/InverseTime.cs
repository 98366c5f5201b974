using Sightglass.Basics.Numbers;

namespace Sightglass.Network.Circuits;

/// <summary>
/// A standard inverse-time characteristic: t = dial·(A/(Mᵖ − 1) + B) with M the multiple of pick-up. Sources: IEC 60255-151 and IEEE C37.112, constants from memory.
/// </summary>
/// <param name="A">s.</param>
/// <param name="B">s.</param>
public readonly record struct InverseTime(double A, double B, double Power)
{
    public static InverseTime IecStandard => new(0.14, 0, 0.02);

    public static InverseTime IecVery => new(13.5, 0, 1);

    public static InverseTime IecExtremely => new(80, 0, 2);

    public static InverseTime IeeeModerately => new(0.0515, 0.1140, 0.02);

    public static InverseTime IeeeVery => new(19.61, 0.491, 2);

    public static InverseTime IeeeExtremely => new(28.2, 0.1217, 2);

    /// <summary>s to opening, endless up to pick-up.</summary>
    /// <param name="multiple">Of pick-up.</param>
    /// <param name="dial">Setting of time, above 0.</param>
    public double SecondsAt(double multiple, double dial = 1) =>
        multiple > 1 ? dial * ((A / (Portable.Pow(new Scalar(multiple), new Scalar(Power)).V - 1)) + B) : double.PositiveInfinity;

    /// <summary>
    /// s until a bimetal opens, which warms as a lump does: τ·ln((m² − θ₀)/(m² − 1)), endless up to the rating. In a network it is a follower of m² with τ that opens at 1.
    /// Source: first-order heating (any text).
    /// </summary>
    /// <param name="multiple">m, of the rating.</param>
    /// <param name="timeConstant">τ, s.</param>
    /// <param name="before">θ₀: square of the multiple that it had carried for long, below 1.</param>
    public static double BimetalSeconds(double multiple, double timeConstant, double before = 0)
    {
        double square = multiple * multiple;
        return multiple > 1 ? timeConstant * Portable.Log(new Scalar((square - before) / (square - 1))).V : double.PositiveInfinity;
    }
}
