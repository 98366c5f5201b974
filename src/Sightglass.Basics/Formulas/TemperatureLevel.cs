namespace Sightglass.Basics.Formulas;

/// <summary>What a temperature in a formula is measured from.</summary>
internal enum TemperatureLevel
{
    /// <summary>Not a temperature, or one that could be either.</summary>
    Unknown,

    /// <summary>Written on a scale with its own zero: <c>20 degC</c>.</summary>
    Scale,

    /// <summary>One temperature taken from another.</summary>
    Difference,
}
