namespace Sightglass.Basics.Quantities;

/// <summary>A mass, or a difference of two.</summary>
public readonly record struct Mass
{
    private Mass(double kilograms) => Kilograms = NotANumber.Refuse(kilograms, nameof(kilograms));

    public double Kilograms { get; }

    public double Pounds => Units.Pound.FromSi(Kilograms);

    public double Tonnes => Units.Tonne.FromSi(Kilograms);

    public double ShortTons => Units.ShortTon.FromSi(Kilograms);

    /// <exception cref="ArgumentOutOfRangeException">Not finite.</exception>
    public static Mass FromKilograms(double kilograms) => new(kilograms);

    /// <inheritdoc cref="FromKilograms"/>
    public static Mass FromPounds(double pounds) => new(Units.Pound.ToSi(pounds));

    /// <inheritdoc cref="FromKilograms"/>
    public static Mass FromTonnes(double tonnes) => new(Units.Tonne.ToSi(tonnes));

    /// <inheritdoc cref="FromKilograms"/>
    public static Mass FromShortTons(double tons) => new(Units.ShortTon.ToSi(tons));

    public static Mass operator +(Mass a, Mass b) => new(a.Kilograms + b.Kilograms);

    public static Mass operator -(Mass a, Mass b) => new(a.Kilograms - b.Kilograms);

    public override string ToString() => QuantityFormat.Text(Kilograms, Units.Kilogram);
}
