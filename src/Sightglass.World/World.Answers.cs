using Sightglass.Basics.Draws;
using Sightglass.Book.Model;

namespace Sightglass.World;

/// <summary>Whether those who are asked answer, and when.</summary>
public sealed partial class World
{
    private static readonly DrawKey s_heard = DrawKey.Of("answer, heard");
    private static readonly DrawKey s_after = DrawKey.Of("answer, after");

    private AnswerStart? _answers;
    private ulong _answerSeed;
    private ulong _answerCase;
    private int _asked;

    /// <summary>Lets questions be answered as a situation says. Each question is a draw of its own, by (seed, case, its number), so that no other draw moves.</summary>
    internal void UseAnswers(AnswerStart answers, ulong seed, ulong caseNumber) =>
        (_answers, _answerSeed, _answerCase, _asked) = (answers, seed, caseNumber, 0);

    /// <summary>Seconds from the end of the next question to its answer; infinite when nobody answers.</summary>
    internal double DrawAnswer()
    {
        if (_answers is not { } answers)
        {
            return HumanTimes.Answer;
        }

        int question = _asked++;
        return Draw.Uniform(_answerSeed, _answerCase, s_heard.At(question)) < answers.Unanswered
            ? double.PositiveInfinity
            : Draw.Between(Draw.Uniform(_answerSeed, _answerCase, s_after.At(question)), answers.From, answers.To);
    }
}
