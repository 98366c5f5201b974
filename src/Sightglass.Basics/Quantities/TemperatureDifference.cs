namespace Sightglass.Basics.Quantities;

/// <summary>How much warmer one thing is than another.</summary>
public readonly record struct TemperatureDifference
{
    private TemperatureDifference(double kelvins) => Kelvins = NotANumber.Refuse(kelvins, nameof(kelvins));

    public double Kelvins { get; }

    /// <summary>In steps of the Fahrenheit scale: 9/5 of the kelvins.</summary>
    public double FahrenheitSteps => Kelvins * 1.8;

    /// <exception cref="ArgumentOutOfRangeException">Not finite.</exception>
    public static TemperatureDifference FromKelvins(double kelvins) => new(kelvins);

    /// <inheritdoc cref="FromKelvins"/>
    public static TemperatureDifference FromFahrenheitSteps(double steps) => new(steps / 1.8);

    public override string ToString() => QuantityFormat.Text(Kelvins, Units.Kelvin);
}
