namespace Sightglass.Training.Lessons;

/// <summary>One change that makes a lesson shorter: planned, not guessed.</summary>
/// <param name="SecondsLess">By so much, above 0.</param>
/// <param name="Fits">Whether it then takes no longer than there is.</param>
public abstract record LessonChange(double SecondsLess, bool Fits)
{
    /// <summary>Somebody speaks at more or fewer stations.</summary>
    public sealed record Stations(int Count, double SecondsLess, bool Fits) : LessonChange(SecondsLess, Fits);

    /// <summary>Less is said.</summary>
    public sealed record Shallower(Depth Depth, double SecondsLess, bool Fits) : LessonChange(SecondsLess, Fits);

    /// <summary>A stop is passed by.</summary>
    /// <param name="Place">Its place.</param>
    public sealed record Without(string Place, double SecondsLess, bool Fits) : LessonChange(SecondsLess, Fits);
}
