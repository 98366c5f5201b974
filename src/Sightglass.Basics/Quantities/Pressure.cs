namespace Sightglass.Basics.Quantities;

/// <summary>A pressure measured from vacuum, never negative.</summary>
public readonly record struct Pressure
{
    private Pressure(double pascals)
    {
        NotANumber.Refuse(pascals, nameof(pascals));
        ArgumentOutOfRangeException.ThrowIfNegative(pascals);
        Pascals = pascals;
    }

    /// <summary>101 325 Pa (ISO 2533 standard atmosphere at sea level, from memory).</summary>
    public static Pressure StandardAtmosphere => new(101_325);

    public double Pascals { get; }

    public double Bar => Pascals / 1e5;

    public double Kilopascals => Pascals / 1e3;

    public double Psia => Units.Psi.FromSi(Pascals);

    /// <exception cref="ArgumentOutOfRangeException">Negative or not finite.</exception>
    public static Pressure FromPascals(double pascals) => new(pascals);

    /// <inheritdoc cref="FromPascals"/>
    public static Pressure FromKilopascals(double kilopascals) => new(kilopascals * 1e3);

    /// <inheritdoc cref="FromPascals"/>
    public static Pressure FromBar(double bar) => new(bar * 1e5);

    /// <inheritdoc cref="FromPascals"/>
    public static Pressure FromPsia(double psia) => new(Units.Psi.ToSi(psia));

    /// <summary>What a gauge in this atmosphere shows.</summary>
    public GaugePressure Above(Pressure atmosphere) => GaugePressure.FromPascals(Pascals - atmosphere.Pascals);

    public override string ToString() => $"{QuantityFormat.Text(Pascals, Units.Kilopascal)} abs";
}
