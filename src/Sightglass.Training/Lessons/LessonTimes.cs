namespace Sightglass.Training.Lessons;

/// <summary>How long people take in a lesson. Common practice, no source.</summary>
public sealed record LessonTimes
{
    /// <summary>Words a minute, spoken slowly, with pointing.</summary>
    public const int Slowly = 120;

    public double WordsAMinute { get; init; } = Slowly;

    /// <summary>From the question to the end of the talk about the answer, s.</summary>
    public double Question { get; init; } = 45;

    /// <summary>From one person's hand on a control to the next one's, beside what operating it takes, s.</summary>
    public double HandOver { get; init; } = 8;

    /// <summary>Greeting, names, sign-in sheet, protection told, s.</summary>
    public double Opening { get; init; } = 480;

    /// <summary>Questions left, cards handed out, s.</summary>
    public double Closing { get; init; } = 300;
}
