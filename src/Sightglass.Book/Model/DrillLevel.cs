namespace Sightglass.Book.Model;

/// <summary>For whom a drill is.</summary>
public enum DrillLevel
{
    /// <summary>Who sees the machine for the first time.</summary>
    FirstDay,

    /// <summary>Who learns to work with it.</summary>
    Working,

    /// <summary>Who is to show that they can.</summary>
    Qualifying,
}
