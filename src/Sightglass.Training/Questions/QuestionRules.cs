using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Language;
using Sightglass.Book.Model;

namespace Sightglass.Training.Questions;

/// <summary>What a question needs to be found again: words, somebody who finds out, and a day.</summary>
public static class QuestionRules
{
    /// <summary>A question is a sentence or two; an answer may be a page.</summary>
    public const int LongestQuestion = 1000;

    public const int LongestAnswer = 10_000;

    /// <summary>Why it cannot be written down, or null.</summary>
    /// <param name="book">Whose items it may be about.</param>
    /// <param name="question">As it would be kept.</param>
    /// <param name="today">The day on which it is asked.</param>
    public static string? WhyNot(ClassBook book, OpenQuestion question, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(question);
        return question.Text.Length == 0 ? Say.It("Write the question as it was asked.")
            : question.Text.Length > LongestQuestion ? Say.With($"The question has {question.Text.Length} letters; {LongestQuestion} are enough for a question. Put the rest into the answer.")
            : question.Owner.Length == 0 ? Say.It("Say who finds out: a question without a name is nobody’s.")
            : question.Due < today ? Say.It("The day lies in the past. Say by when the answer is wanted.")
            : question.Item is { } item && !book.Items.ContainsKey(item) ? Say.With($"The book has no item “{item}”. {BookHint.Of(item, book)}")
            : null;
    }

    /// <summary>Why it cannot be answered so, or null.</summary>
    public static string? WhyNoAnswer(OpenQuestion question, string answer, string by)
    {
        ArgumentNullException.ThrowIfNull(question);
        ArgumentNullException.ThrowIfNull(answer);
        return question.Answer is not null ? Say.With($"It was answered by {question.AnsweredBy} meanwhile.")
            : answer.Length == 0 ? Say.It("Write what was found.")
            : answer.Length > LongestAnswer ? Say.With($"The answer has {answer.Length} letters; {LongestAnswer} is the most that is kept.")
            : string.IsNullOrWhiteSpace(by) ? Say.It("Say who found it, so that others can ask back.")
            : null;
    }
}
