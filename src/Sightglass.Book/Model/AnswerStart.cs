namespace Sightglass.Book.Model;

/// <summary>How those answer who are asked for a protection or a permission; drawn for each question.</summary>
/// <param name="From">Seconds, after the question was put, at least.</param>
/// <param name="To">Seconds at most.</param>
/// <param name="Unanswered">Share of questions that nobody answers, 0…1.</param>
public sealed record AnswerStart(double From, double To, double Unanswered)
{
    /// <summary>Where a situation says nothing: within a minute, and one question in twenty is not heard (common practice, no source).</summary>
    public static AnswerStart Ordinary { get; } = new(5, 60, 0.05);
}
