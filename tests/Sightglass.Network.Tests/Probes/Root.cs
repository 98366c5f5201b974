namespace Sightglass.Network.Tests.Probes;

/// <summary>Where a function changes sign, by halving.</summary>
public static class Root
{
    /// <param name="margin">Changes sign once between the two.</param>
    public static double Of(Func<double, double> margin, double low, double high)
    {
        bool risesFromNegative = margin(low) < 0;
        Assert.NotEqual(risesFromNegative, margin(high) < 0);
        for (int i = 0; i < 200; i++)
        {
            double middle = (low + high) / 2;
            (low, high) = margin(middle) < 0 == risesFromNegative ? (middle, high) : (low, middle);
        }

        return (low + high) / 2;
    }
}
