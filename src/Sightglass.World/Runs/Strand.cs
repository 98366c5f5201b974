using Sightglass.Cards.Sentences;

namespace Sightglass.World.Runs;

/// <summary>How far one person has come in a program: the only one, or one of several who work at the same time.</summary>
/// <param name="number">Its place in the run; 0 is the card's own.</param>
internal sealed class Strand(int number)
{
    public int Number { get; } = number;

    /// <summary>Whether it has something to do; the card's own rests while others work at the same time.</summary>
    public bool Active { get; set; }

    /// <summary>Index of the operation under way, or the next.</summary>
    public int Next { get; set; }

    /// <summary>Whether the operation has begun and takes its time.</summary>
    public bool Halfway { get; set; }

    /// <summary>Who does it.</summary>
    public int Actor { get; set; }

    /// <summary>Where a control stood before it was held elsewhere by hand.</summary>
    public string HeldFrom { get; set; } = "";

    /// <summary>Seconds until the answer to the question under way; infinite when nobody answers.</summary>
    public double AnswersAfter { get; set; }

    /// <summary>Which question it has put to somebody to do something, counted.</summary>
    public int Question { get; set; }

    /// <summary>What was answered to it.</summary>
    public Reply Reply { get; set; }

    /// <summary>Owner of its waiting sentinel, and number of its deadline.</summary>
    public int Wait => Sentinel.Wait + Number;

    public void Clear() => (Active, Next, Halfway, Actor, HeldFrom, AnswersAfter, Question, Reply) = (false, 0, false, 0, "", 0, 0, Reply.None);
}
