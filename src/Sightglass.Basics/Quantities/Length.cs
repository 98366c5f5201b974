namespace Sightglass.Basics.Quantities;

/// <summary>A length, or a difference of two.</summary>
public readonly record struct Length
{
    private Length(double metres) => Metres = NotANumber.Refuse(metres, nameof(metres));

    public double Metres { get; }

    public double Millimetres => Units.Millimetre.FromSi(Metres);

    public double Inches => Units.Inch.FromSi(Metres);

    public double Feet => Units.Foot.FromSi(Metres);

    /// <exception cref="ArgumentOutOfRangeException">Not finite.</exception>
    public static Length FromMetres(double metres) => new(metres);

    /// <inheritdoc cref="FromMetres"/>
    public static Length FromMillimetres(double millimetres) => new(Units.Millimetre.ToSi(millimetres));

    /// <inheritdoc cref="FromMetres"/>
    public static Length FromInches(double inches) => new(Units.Inch.ToSi(inches));

    /// <inheritdoc cref="FromMetres"/>
    public static Length FromFeet(double feet) => new(Units.Foot.ToSi(feet));

    public static Length operator +(Length a, Length b) => new(a.Metres + b.Metres);

    public static Length operator -(Length a, Length b) => new(a.Metres - b.Metres);

    public override string ToString() => QuantityFormat.Text(Metres, Units.Metre);
}
