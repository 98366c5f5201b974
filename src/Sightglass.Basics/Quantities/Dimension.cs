namespace Sightglass.Basics.Quantities;

/// <summary>Exponents of the SI base units. Angle and count are dimensionless.</summary>
public readonly record struct Dimension(sbyte Mass, sbyte Length, sbyte Time, sbyte Temperature = 0, sbyte Current = 0)
{
    public static readonly Dimension One;
    public static readonly Dimension Kilogram = new(1, 0, 0);
    public static readonly Dimension Metre = new(0, 1, 0);
    public static readonly Dimension Second = new(0, 0, 1);
    public static readonly Dimension Kelvin = new(0, 0, 0, 1);
    public static readonly Dimension Ampere = new(0, 0, 0, 0, 1);
    public static readonly Dimension Area = new(0, 2, 0);
    public static readonly Dimension Volume = new(0, 3, 0);
    public static readonly Dimension Speed = new(0, 1, -1);
    public static readonly Dimension VolumeFlow = new(0, 3, -1);
    public static readonly Dimension MassFlow = new(1, 0, -1);
    public static readonly Dimension Density = new(1, -3, 0);
    public static readonly Dimension Pressure = new(1, -1, -2);
    public static readonly Dimension Power = new(1, 2, -3);
    public static readonly Dimension Energy = new(1, 2, -2);
    public static readonly Dimension Frequency = new(0, 0, -1);
    public static readonly Dimension Voltage = new(1, 2, -3, 0, -1);
    public static readonly Dimension KinematicViscosity = new(0, 2, -1);
    public static readonly Dimension Force = new(1, 1, -2);
    public static readonly Dimension Stiffness = new(1, 0, -2);
    public static readonly Dimension Acceleration = new(0, 1, -2);
    public static readonly Dimension Resistance = new(1, 2, -3, 0, -2);
    public static readonly Dimension HeatCapacity = new(1, 2, -2, -1);
    public static readonly Dimension HeatConductance = new(1, 2, -3, -1);

    public static Dimension operator *(Dimension a, Dimension b) => new(
        (sbyte)(a.Mass + b.Mass), (sbyte)(a.Length + b.Length), (sbyte)(a.Time + b.Time), (sbyte)(a.Temperature + b.Temperature), (sbyte)(a.Current + b.Current));

    public static Dimension operator /(Dimension a, Dimension b) => new(
        (sbyte)(a.Mass - b.Mass), (sbyte)(a.Length - b.Length), (sbyte)(a.Time - b.Time), (sbyte)(a.Temperature - b.Temperature), (sbyte)(a.Current - b.Current));

    /// <summary>A name a reader knows (<c>pressure</c>), or the product of SI units where there is none.</summary>
    public override string ToString() => DimensionNames.NameOf(this);
}
