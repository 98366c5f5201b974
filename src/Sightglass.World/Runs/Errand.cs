using Sightglass.Cards.Sentences;

namespace Sightglass.World.Runs;

/// <summary>
/// What somebody was asked to do: from the question until the answer has been said. It goes on when whoever asked has given up waiting.
/// </summary>
/// <param name="number">Its place in the run.</param>
internal sealed class Errand(int number)
{
    public int Number { get; } = number;

    public ErrandStage Stage { get; set; }

    /// <summary>Who was asked.</summary>
    public int Person { get; set; }

    /// <summary>Index of the operation that asks.</summary>
    public int Op { get; set; }

    /// <summary>Number of the strand that asks.</summary>
    public int Asker { get; set; }

    /// <summary>Which of the asker's questions it is, so that the answer to an old one is not taken for the answer to a new one.</summary>
    public int Question { get; set; }

    /// <summary>What will be answered.</summary>
    public Reply Reply { get; set; }

    /// <summary>Whether it has the person's hands.</summary>
    public bool IsUnderWay => Stage >= ErrandStage.Begun;

    public void Clear() => (Stage, Person, Op, Asker, Question, Reply) = (ErrandStage.None, 0, 0, 0, 0, Reply.None);
}
