namespace Sightglass.Basics.Statistics;

/// <summary>Where a quantity lies with a stated confidence, ends included.</summary>
public readonly record struct Interval(double Lower, double Upper)
{
    public bool Contains(double x) => x >= Lower && x <= Upper;
}
