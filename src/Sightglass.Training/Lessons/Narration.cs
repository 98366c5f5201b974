using System.Collections.Immutable;
using Sightglass.Basics.Language;
using Sightglass.Book.Model;

namespace Sightglass.Training.Lessons;

/// <summary>A lesson spoken from its first stop to its last, without hands and walks: what a voice or a film says.</summary>
public static class Narration
{
    /// <summary>After the last word at a stop, s.</summary>
    private const double Breath = 1.5;

    /// <summary>After a question, so that somebody can answer, s (common practice, no source).</summary>
    private const double Pause = 6;

    /// <summary>Sentences in the order in which they are said, each with its time.</summary>
    public static ImmutableArray<SpokenLine> Of(LessonPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        List<SpokenLine> lines = [];
        double now = 0;
        int number = 0;
        foreach (LessonStop stop in plan.Stops)
        {
            number++;
            string place = Say.Book(stop.Stop.Place.Name);
            Speak(Say.With($"Stop {number}: {place}."), 0.5);
            foreach ((SignalWord word, string text) in stop.Notices)
            {
                SpeakAll($"{Say.Word(word.ToString())}. {text}");
            }

            foreach (LessonPoint point in stop.Points)
            {
                Speak($"{Say.Begin(Say.Book(point.Item.Name))}.", 0);
                foreach (string says in point.Said)
                {
                    SpeakAll(says);
                }
            }

            foreach (Question question in stop.Questions)
            {
                Speak(Say.Book(question.Asked), Pause);
                SpeakAll(Say.Book(question.Answer));
            }

            now += Breath;

            void SpeakAll(string text)
            {
                foreach (string sentence in Sentences(text))
                {
                    Speak(sentence, 0);
                }
            }

            void Speak(string sentence, double pause)
            {
                double seconds = Math.Max(1, sentence.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Length / plan.Times.WordsAMinute * 60);
                lines.Add(new(place, sentence, now, now + seconds));
                now += seconds + pause;
            }
        }

        return [.. lines];
    }

    /// <summary>A text cut after full stops, question and exclamation marks that a space follows.</summary>
    internal static IEnumerable<string> Sentences(string text)
    {
        int from = 0;
        for (int i = 0; i + 1 < text.Length; i++)
        {
            if (text[i] is '.' or '?' or '!' && text[i + 1] == ' ' && i + 2 < text.Length && (char.IsUpper(text[i + 2]) || char.IsDigit(text[i + 2]) || text[i + 2] is '¿' or '¡'))
            {
                yield return text[from..(i + 1)].Trim();
                from = i + 1;
            }
        }

        if (text[from..].Trim() is { Length: > 0 } last)
        {
            yield return last;
        }
    }
}
