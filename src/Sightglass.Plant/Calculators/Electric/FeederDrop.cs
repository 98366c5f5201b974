namespace Sightglass.Plant.Calculators.Electric;

/// <summary>
/// What a feeder loses at a known current, lagging. Voltages are of one phase to neutral; times √3 between phases. Source: IEEE Std 141, ch. 3 (from memory). For anything but one balanced load use the load
/// flow.
/// </summary>
public static class FeederDrop
{
    /// <summary>V at the far end, exact: √(V² − b²) − a with a = I(R·cosφ + X·sinφ), b = I(X·cosφ − R·sinφ).</summary>
    /// <param name="sendingVolts">Above <c>b</c>.</param>
    /// <param name="ohms">R of one wire.</param>
    /// <param name="reactance">X of one wire, Ω.</param>
    /// <param name="powerFactor">cosφ of the load, 0…1.</param>
    public static double ReceivingVolts(double sendingVolts, double amperes, double ohms, double reactance, double powerFactor)
    {
        double across = amperes * ((reactance * powerFactor) - (ohms * PowerFactor.Sine(powerFactor)));
        return Math.Sqrt((sendingVolts * sendingVolts) - (across * across)) - VoltsAlong(amperes, ohms, reactance, powerFactor);
    }

    /// <summary>V lost along the load's voltage: a, the usual approximation of the whole drop.</summary>
    public static double VoltsAlong(double amperes, double ohms, double reactance, double powerFactor) =>
        amperes * ((ohms * powerFactor) + (reactance * PowerFactor.Sine(powerFactor)));

    /// <summary>W lost in three wires.</summary>
    public static double LossWatts(double amperes, double ohms) => 3 * amperes * amperes * ohms;
}
