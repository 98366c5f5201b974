namespace Sightglass.Plant.Calculators.Electric;

/// <summary>
/// Equal loads at equal distances along a feeder, as shares of what one load of their sum at the far end would do. Source: Kersting, Distribution System Modeling and Analysis, ch. 3 (from memory).
/// </summary>
public static class EqualTaps
{
    /// <summary>Share of the voltage drop to the last tap: (n + 1)/(2n), towards ½.</summary>
    /// <param name="taps">n, 1 or more.</param>
    public static double DropShare(int taps) => (taps + 1.0) / (2 * taps);

    /// <summary>Share of the loss: (n + 1)(2n + 1)/(6n²), towards ⅓.</summary>
    /// <param name="taps">n, 1 or more.</param>
    public static double LossShare(int taps) => (taps + 1.0) * ((2 * taps) + 1) / (6.0 * taps * taps);
}
