namespace Sightglass.Plant.Calculators.Heat;

/// <summary>How the streams of a heat exchanger pass each other.</summary>
public enum ExchangerKind
{
    Parallel,
    Counter,

    /// <summary>One pass in the shell, an even number in the tubes.</summary>
    OneShell,

    /// <summary>Across each other, neither mixed: a radiator.</summary>
    Cross,
}
