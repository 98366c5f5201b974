namespace Sightglass.Network.Phasors;

/// <summary>A complex number, for voltages and currents of one frequency, impedances and powers. Of + − × ÷ √ only, so that it has the same bits everywhere.</summary>
public readonly record struct Phasor(double Re, double Im)
{
    /// <summary>√3/2.</summary>
    private const double HalfRootOfThree = 0.8660254037844386;

    public static Phasor Zero => default;

    public static Phasor One => new(1, 0);

    public double SquaredMagnitude => (Re * Re) + (Im * Im);

    public double Magnitude => Math.Sqrt(SquaredMagnitude);

    public Phasor Conjugate => new(Re, -Im);

    public bool IsFinite => double.IsFinite(Re) && double.IsFinite(Im);

    public static Phasor operator +(Phasor a, Phasor b) => new(a.Re + b.Re, a.Im + b.Im);

    public static Phasor operator -(Phasor a, Phasor b) => new(a.Re - b.Re, a.Im - b.Im);

    public static Phasor operator -(Phasor a) => new(-a.Re, -a.Im);

    public static Phasor operator *(Phasor a, Phasor b) => new((a.Re * b.Re) - (a.Im * b.Im), (a.Re * b.Im) + (a.Im * b.Re));

    public static Phasor operator *(double a, Phasor b) => new(a * b.Re, a * b.Im);

    public static Phasor operator /(Phasor a, Phasor b) => (1 / b.SquaredMagnitude) * (a * b.Conjugate);

    /// <summary>1/z.</summary>
    public static Phasor Inverse(Phasor z) => (1 / z.SquaredMagnitude) * z.Conjugate;

    /// <summary>Its parts; what a record prints of itself would print the conjugate's conjugate without end.</summary>
    public override string ToString() => FormattableString.Invariant($"{Re:R} + j{Im:R}");

    /// <summary>1∠0°, 1∠−120° or 1∠120°: the phases of a three-phase source in their order.</summary>
    /// <param name="phase">0, 1 or 2.</param>
    public static Phasor OfPhase(int phase) => phase switch
    {
        0 => One,
        1 => new(-0.5, -HalfRootOfThree),
        2 => new(-0.5, HalfRootOfThree),
        _ => throw new ArgumentOutOfRangeException(nameof(phase), phase, "There are three phases: 0, 1 and 2."),
    };
}
