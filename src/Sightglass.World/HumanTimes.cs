namespace Sightglass.World;

/// <summary>How long people take for what the book says nothing about (common practice, no source).</summary>
public sealed record HumanTimes
{
    /// <summary>Seconds to look at one thing.</summary>
    public double Look { get; init; } = 2;

    /// <summary>Seconds to say one thing by radio.</summary>
    public double Tell { get; init; } = 6;

    /// <summary>Seconds until somebody who was asked has answered, where no situation draws it.</summary>
    public double Answer { get; init; } = 15;

    /// <summary>Seconds for which somebody waits for an answer that does not come.</summary>
    public double WaitsForAnswer { get; init; } = 60;

    /// <summary>Seconds to lock a control, hang a tag and try it.</summary>
    public double Lock { get; init; } = 30;

    /// <summary>Seconds to set a chock under a wheel, or to take it away.</summary>
    public double Chock { get; init; } = 20;

    /// <summary>Seconds to set a signal, or to take it away.</summary>
    public double SetSignal { get; init; } = 20;

    /// <summary>Seconds to find that a door, steps or a ladder cannot be used.</summary>
    public double TriesDoor { get; init; } = 5;

    /// <summary>Seconds after the start within which a card must have become of use, else it is not applicable.</summary>
    public double NoticeWindow { get; init; } = 3600;

    /// <summary>Longest run of one card before it is called undecided, seconds.</summary>
    public double LongestRun { get; init; } = 48 * 3600;
}
