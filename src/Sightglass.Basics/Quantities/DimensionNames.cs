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
        [Dimension.Force] = "force",
        [Dimension.Stiffness] = "stiffness",
        [Dimension.Acceleration] = "acceleration",
        [Dimension.Resistance] = "resistance",
        [Dimension.HeatCapacity] = "heat capacity",
        [Dimension.HeatConductance] = "heat conductance",
    };

    private static readonly Dictionary<Dimension, string> s_examples = new()
    {
        [Dimension.One] = "`0.62` or `3 %`",
        [Dimension.Kilogram] = "`90 kg`",
        [Dimension.Metre] = "`20 mm`",
        [Dimension.Second] = "`5 min`",
        [Dimension.Kelvin] = "`20 degC`",
        [Dimension.Ampere] = "`30 A`",
        [Dimension.Area] = "`5 cm^2`",
        [Dimension.Volume] = "`45 US gal`",
        [Dimension.Speed] = "`1.3 m/s`",
        [Dimension.VolumeFlow] = "`20 L/h`",
        [Dimension.MassFlow] = "`0.2 kg/s`",
        [Dimension.Density] = "`840 kg/m^3`",
        [Dimension.Pressure] = "`90 psi`",
        [Dimension.Power] = "`400 kW`",
        [Dimension.Energy] = "`5 MJ`",
        [Dimension.Frequency] = "`900 rpm`",
        [Dimension.Voltage] = "`74 V`",
        [Dimension.KinematicViscosity] = "`3 mm^2/s`",
        [Dimension.Force] = "`180 kN`",
        [Dimension.Stiffness] = "`1.5 kN/mm`",
        [Dimension.Acceleration] = "`0.5 m/s^2`",
        [Dimension.Resistance] = "`0.4 Ohm`",
        [Dimension.HeatCapacity] = "`4.2 kJ/K`",
        [Dimension.HeatConductance] = "`25 kW/K`",
    };

    public static string NameOf(Dimension d) => s_names.TryGetValue(d, out string? name) ? name : Product(d);

    /// <summary>The name with its article: <c>a pressure</c>, <c>an area</c>, <c>a quantity in kg·m</c>.</summary>
    public static string WithArticle(Dimension d)
    {
        if (!s_names.TryGetValue(d, out string? name))
        {
            return $"a quantity in {Product(d)}";
        }

        bool vowel = "aeiou".Contains(name[0], StringComparison.Ordinal);
        return d == Dimension.One ? name : vowel ? $"an {name}" : $"a {name}";
    }

    /// <summary>What to write: <c>a pressure such as `90 psi`</c>.</summary>
    public static string WithExample(Dimension d) =>
        s_examples.TryGetValue(d, out string? example) ? $"{WithArticle(d)} such as {example}" : WithArticle(d);

    private static string Product(Dimension d)
    {
        (string Symbol, int Power)[] parts = [("kg", d.Mass), ("m", d.Length), ("s", d.Time), ("K", d.Temperature), ("A", d.Current)];
        return string.Join("·", parts.Where(p => p.Power != 0).Select(p => p.Power == 1 ? p.Symbol : $"{p.Symbol}^{p.Power}"));
    }
}
