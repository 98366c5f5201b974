namespace Sightglass.Basics.Quantities;

/// <summary>A point of temperature, measured from absolute zero.</summary>
public readonly record struct Temperature
{
    private Temperature(double kelvins)
    {
        NotANumber.Refuse(kelvins, nameof(kelvins));
        ArgumentOutOfRangeException.ThrowIfNegative(kelvins);
        Kelvins = kelvins;
    }

    public double Kelvins { get; }

    public double DegreesCelsius => Units.DegreeCelsius.FromSi(Kelvins);

    public double DegreesFahrenheit => Units.DegreeFahrenheit.FromSi(Kelvins);

    /// <exception cref="ArgumentOutOfRangeException">Below absolute zero or not finite.</exception>
    public static Temperature FromKelvins(double kelvins) => new(kelvins);

    /// <inheritdoc cref="FromKelvins"/>
    public static Temperature FromDegreesCelsius(double degrees) => new(Units.DegreeCelsius.ToSi(degrees));

    /// <inheritdoc cref="FromKelvins"/>
    public static Temperature FromDegreesFahrenheit(double degrees) => new(Units.DegreeFahrenheit.ToSi(degrees));

    public static TemperatureDifference operator -(Temperature a, Temperature b) => TemperatureDifference.FromKelvins(a.Kelvins - b.Kelvins);

    public static Temperature operator +(Temperature a, TemperatureDifference b) => new(a.Kelvins + b.Kelvins);

    public static Temperature operator -(Temperature a, TemperatureDifference b) => new(a.Kelvins - b.Kelvins);

    public override string ToString() => QuantityFormat.Text(Kelvins, Units.DegreeCelsius);
}
