namespace Sightglass.Basics.Quantities;

/// <summary>Names of dimensions for messages.</summary>
internal static class DimensionNames
{
    private static readonly Dictionary<Dimension, string> s_names = new()
    {
        [Dimension.One] = "a plain number",
        [Dimension.Kilogram] = "mass",
        [Dimension.Metre] = "length",
        [Dimension.Second] = "time",
        [Dimension.Kelvin] = "temperature",
        [Dimension.Ampere] = "current",
        [Dimension.Area] = "area",
        [Dimension.Volume] = "volume",
        [Dimension.Speed] = "speed",
        [Dimension.VolumeFlow] = "volume flow",
        [Dimension.MassFlow] = "mass flow",
        [Dimension.Density] = "density",
        [Dimension.Pressure] = "pressure",
        [Dimension.Power] = "power",
        [Dimension.Energy] = "energy",
        [Dimension.Frequency] = "frequency",
        [Dimension.Voltage] = "voltage",
        [Dimension.KinematicViscosity] = "kinematic viscosity",
    };

    public static string NameOf(Dimension d) => s_names.TryGetValue(d, out string? name) ? name : Product(d);

    private static string Product(Dimension d)
    {
        (string Symbol, int Power)[] parts = [("kg", d.Mass), ("m", d.Length), ("s", d.Time), ("K", d.Temperature), ("A", d.Current)];
        return string.Join("·", parts.Where(p => p.Power != 0).Select(p => p.Power == 1 ? p.Symbol : $"{p.Symbol}^{p.Power}"));
    }
}
