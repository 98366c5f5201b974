namespace Sightglass.Basics.Quantities;

/// <summary>A volume, or a difference of two.</summary>
public readonly record struct Volume
{
    private Volume(double cubicMetres) => CubicMetres = NotANumber.Refuse(cubicMetres, nameof(cubicMetres));

    public double CubicMetres { get; }

    public double Litres => Units.Litre.FromSi(CubicMetres);

    public double UsGallons => Units.UsGallon.FromSi(CubicMetres);

    /// <exception cref="ArgumentOutOfRangeException">Not finite.</exception>
    public static Volume FromCubicMetres(double cubicMetres) => new(cubicMetres);

    /// <inheritdoc cref="FromCubicMetres"/>
    public static Volume FromLitres(double litres) => new(Units.Litre.ToSi(litres));

    /// <inheritdoc cref="FromCubicMetres"/>
    public static Volume FromUsGallons(double gallons) => new(Units.UsGallon.ToSi(gallons));

    public static Volume operator +(Volume a, Volume b) => new(a.CubicMetres + b.CubicMetres);

    public static Volume operator -(Volume a, Volume b) => new(a.CubicMetres - b.CubicMetres);

    public override string ToString() => QuantityFormat.Text(CubicMetres, Units.Litre);
}
