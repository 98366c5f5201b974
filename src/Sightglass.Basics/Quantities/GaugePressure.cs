namespace Sightglass.Basics.Quantities;

/// <summary>A pressure measured from the air around; negative for suction.</summary>
public readonly record struct GaugePressure
{
    private GaugePressure(double pascals) => Pascals = NotANumber.Refuse(pascals, nameof(pascals));

    public double Pascals { get; }

    public double Bar => Pascals / 1e5;

    public double Kilopascals => Pascals / 1e3;

    public double Psi => Units.Psi.FromSi(Pascals);

    /// <exception cref="ArgumentOutOfRangeException">Not finite.</exception>
    public static GaugePressure FromPascals(double pascals) => new(pascals);

    /// <inheritdoc cref="FromPascals"/>
    public static GaugePressure FromKilopascals(double kilopascals) => new(kilopascals * 1e3);

    /// <inheritdoc cref="FromPascals"/>
    public static GaugePressure FromBar(double bar) => new(bar * 1e5);

    /// <inheritdoc cref="FromPascals"/>
    public static GaugePressure FromPsi(double psi) => new(Units.Psi.ToSi(psi));

    /// <summary>Measured from vacuum, in this atmosphere.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below vacuum.</exception>
    public Pressure In(Pressure atmosphere) => Pressure.FromPascals(Pascals + atmosphere.Pascals);

    public override string ToString() => QuantityFormat.Text(Pascals, Units.Kilopascal);
}
