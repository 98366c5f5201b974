namespace Sightglass.Basics.Quantities;

/// <summary>
/// The units of the trade with their factors to SI. Factors of US customary units follow from the exact definitions
/// 1 in = 25.4 mm, 1 lb = 0.45359237 kg, 1 US gal = 231 in³, g = 9.80665 m/s² (NIST SP 811, from memory).
/// </summary>
internal static class UnitList
{
    private const double Inch = 0.0254;
    private const double Foot = 12 * Inch;
    private const double Mile = 5280 * Foot;
    private const double Gallon = 231 * Inch * Inch * Inch;
    private const double Pound = 0.45359237;
    private const double Gravity = 9.80665;
    private const double PoundForce = Pound * Gravity;
    private const double Psi = PoundForce / (Inch * Inch);
    private const double Litre = 1e-3;
    private const double Hour = 3600;

    /// <summary>Density of mercury at 0 °C, kg/m³, that defines the conventional inch of mercury.</summary>
    private const double Mercury = 13595.1;

    /// <summary>Other spellings, each with the symbol it stands for.</summary>
    public static readonly (string Other, string Symbol)[] Spellings =
    [
        ("um", "µm"), ("\u03BCm", "µm"), ("l", "L"), ("ml", "mL"), ("l/s", "L/s"), ("l/min", "L/min"), ("l/h", "L/h"),
        ("°C", "degC"), ("°F", "degF"), ("°", "deg"), ("\u2126", "Ohm"), ("\u03A9", "Ohm"), ("ohm", "Ohm"), ("psig", "psi"), ("gpm", "US gal/min"),
    ];

    public static Unit[] All() =>
    [
        .. Plain(), .. Lengths(), .. Areas(), .. Volumes(), .. Masses(), .. Times(), .. Pressures(), .. Temperatures(), .. Powers(),
        .. Energies(), .. Electric(), .. Frequencies(), .. Speeds(), .. VolumeFlows(), .. MassFlows(), .. Others(),
    ];

    private static Unit[] Plain() =>
    [
        new("1", Dimension.One, 1), new("%", Dimension.One, 0.01), new("deg", Dimension.One, Math.PI / 180),
    ];

    private static Unit[] Lengths() =>
    [
        new("m", Dimension.Metre, 1), new("mm", Dimension.Metre, 1e-3), new("cm", Dimension.Metre, 1e-2), new("km", Dimension.Metre, 1e3),
        new("µm", Dimension.Metre, 1e-6), new("in", Dimension.Metre, Inch), new("ft", Dimension.Metre, Foot),
        new("yd", Dimension.Metre, 3 * Foot), new("mi", Dimension.Metre, Mile),
    ];

    private static Unit[] Areas() =>
    [
        new("m^2", Dimension.Area, 1), new("cm^2", Dimension.Area, 1e-4), new("mm^2", Dimension.Area, 1e-6),
        new("in^2", Dimension.Area, Inch * Inch), new("ft^2", Dimension.Area, Foot * Foot),
    ];

    private static Unit[] Volumes() =>
    [
        new("m^3", Dimension.Volume, 1), new("L", Dimension.Volume, Litre), new("mL", Dimension.Volume, 1e-6), new("cm^3", Dimension.Volume, 1e-6),
        new("US gal", Dimension.Volume, Gallon), new("ft^3", Dimension.Volume, Foot * Foot * Foot), new("in^3", Dimension.Volume, Inch * Inch * Inch),
    ];

    private static Unit[] Masses() =>
    [
        new("kg", Dimension.Kilogram, 1), new("g", Dimension.Kilogram, 1e-3), new("lb", Dimension.Kilogram, Pound),
        new("short ton", Dimension.Kilogram, 2000 * Pound), new("t", Dimension.Kilogram, 1e3),
    ];

    private static Unit[] Times() =>
    [
        new("s", Dimension.Second, 1), new("ms", Dimension.Second, 1e-3), new("min", Dimension.Second, 60), new("h", Dimension.Second, Hour),
        new("d", Dimension.Second, 24 * Hour),
    ];

    private static Unit[] Pressures() =>
    [
        new("Pa", Dimension.Pressure, 1), new("kPa", Dimension.Pressure, 1e3), new("MPa", Dimension.Pressure, 1e6),
        new("bar", Dimension.Pressure, 1e5), new("mbar", Dimension.Pressure, 100), new("psi", Dimension.Pressure, Psi),
        new("inHg", Dimension.Pressure, Inch * Mercury * Gravity), new("ftH2O", Dimension.Pressure, Foot * 1000 * Gravity),
        new("inH2O", Dimension.Pressure, Inch * 1000 * Gravity),
        new("psia", Dimension.Pressure, Psi) { IsAbsolute = true }, new("bar abs", Dimension.Pressure, 1e5) { IsAbsolute = true },
        new("kPa abs", Dimension.Pressure, 1e3) { IsAbsolute = true },
    ];

    private static Unit[] Temperatures() =>
    [
        new("K", Dimension.Kelvin, 1), new("degC", Dimension.Kelvin, 1, 273.15), new("degF", Dimension.Kelvin, 5.0 / 9, 459.67 * 5 / 9),
    ];

    private static Unit[] Powers() =>
    [
        new("W", Dimension.Power, 1), new("kW", Dimension.Power, 1e3), new("MW", Dimension.Power, 1e6), new("hp", Dimension.Power, 550 * Foot * PoundForce),
    ];

    /// <summary>Btu: International Table, 1055.05585262 J.</summary>
    private static Unit[] Energies() =>
    [
        new("J", Dimension.Energy, 1), new("kJ", Dimension.Energy, 1e3), new("MJ", Dimension.Energy, 1e6), new("kWh", Dimension.Energy, 3.6e6),
        new("Btu", Dimension.Energy, 1055.05585262),
    ];

    private static Unit[] Electric() =>
    [
        new("V", Dimension.Voltage, 1), new("kV", Dimension.Voltage, 1e3), new("mV", Dimension.Voltage, 1e-3), new("A", Dimension.Ampere, 1),
        new("mA", Dimension.Ampere, 1e-3), new("Ohm", Dimension.Resistance, 1), new("mOhm", Dimension.Resistance, 1e-3), new("kOhm", Dimension.Resistance, 1e3), new("MOhm", Dimension.Resistance, 1e6), new("Ah", Dimension.Ampere * Dimension.Second, Hour),
    ];

    /// <summary><c>rpm</c> counts turns: 60 rpm = 1/s, not 2π/s.</summary>
    private static Unit[] Frequencies() =>
    [
        new("Hz", Dimension.Frequency, 1), new("kHz", Dimension.Frequency, 1e3), new("rpm", Dimension.Frequency, 1.0 / 60),
    ];

    private static Unit[] Speeds() =>
    [
        new("m/s", Dimension.Speed, 1), new("km/h", Dimension.Speed, 1 / 3.6), new("mph", Dimension.Speed, Mile / Hour), new("ft/s", Dimension.Speed, Foot),
    ];

    private static Unit[] VolumeFlows() =>
    [
        new("m^3/s", Dimension.VolumeFlow, 1), new("L/s", Dimension.VolumeFlow, Litre), new("L/min", Dimension.VolumeFlow, Litre / 60),
        new("L/h", Dimension.VolumeFlow, Litre / Hour), new("m^3/h", Dimension.VolumeFlow, 1 / Hour), new("US gal/min", Dimension.VolumeFlow, Gallon / 60),
        new("US gal/h", Dimension.VolumeFlow, Gallon / Hour), new("ft^3/min", Dimension.VolumeFlow, Foot * Foot * Foot / 60),
    ];

    private static Unit[] MassFlows() =>
    [
        new("kg/s", Dimension.MassFlow, 1), new("g/s", Dimension.MassFlow, 1e-3), new("kg/h", Dimension.MassFlow, 1 / Hour), new("lb/h", Dimension.MassFlow, Pound / Hour),
    ];

    private static Unit[] Others() =>
    [
        new("kg/m^3", Dimension.Density, 1), new("kg/L", Dimension.Density, 1e3), new("lb/ft^3", Dimension.Density, Pound / (Foot * Foot * Foot)),
        new("m^2/s", Dimension.KinematicViscosity, 1), new("mm^2/s", Dimension.KinematicViscosity, 1e-6), new("cSt", Dimension.KinematicViscosity, 1e-6),
        new("N", Dimension.Force, 1), new("kN", Dimension.Force, 1e3), new("lbf", Dimension.Force, PoundForce), new("m/s^2", Dimension.Acceleration, 1),
        new("J/K", Dimension.HeatCapacity, 1), new("kJ/K", Dimension.HeatCapacity, 1e3), new("MJ/K", Dimension.HeatCapacity, 1e6),
        new("W/K", Dimension.HeatConductance, 1), new("kW/K", Dimension.HeatConductance, 1e3), new("MW/K", Dimension.HeatConductance, 1e6),
    ];
}
