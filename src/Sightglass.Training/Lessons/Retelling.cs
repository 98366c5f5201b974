using Sightglass.Book.Model;

namespace Sightglass.Training.Lessons;

/// <summary>Goes along the stops of one station and makes short what the same group has been told there before. Another station begins anew: its first group comes from nowhere.</summary>
/// <param name="times">How long people take.</param>
internal sealed class Retelling(LessonTimes times)
{
    /// <summary>A question is the same as another one where its answer is, word by word, and as long as this: of short ones many are alike.</summary>
    private const int WordsOfTheSame = 8;

    private readonly Dictionary<string, int> _told = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<LessonPoint>> _said = new(StringComparer.Ordinal);
    private readonly HashSet<string> _answered = new(StringComparer.Ordinal);

    /// <summary>The next stop of the station, as long as what is told there takes now.</summary>
    /// <param name="stop">With everything told whole.</param>
    /// <param name="number">Its number in the lesson.</param>
    public LessonStop Next(LessonStop stop, int number)
    {
        LessonStop told = stop with
        {
            Cautions = [.. stop.Cautions.Select(c => c with { AsAt = _told.TryGetValue(c.Caution.Text, out int at) && ToldCaution.CanBeShort(c.Caution) ? at : null })],
            Points = [.. stop.Points.Select(Point)],
            Questions = [.. stop.Questions.Where(q => !stop.Points.Any(p => p.Item.Questions.Contains(q)) || IsNew(q))], // One that was edited is always asked.
        };
        foreach (ToldCaution caution in stop.Cautions)
        {
            _told.TryAdd(caution.Caution.Text, number);
        }

        int saved = Words(stop) - Words(told);
        return told with { Seconds = stop.Seconds - (stop.Turns * ((saved / times.WordsAMinute * 60) + ((stop.Questions.Length - told.Questions.Length) * times.Question))) };
    }

    private static int Words(LessonStop stop) => stop.Cautions.Sum(c => c.Words) + stop.Points.Sum(p => p.Words);

    private LessonPoint Point(LessonPoint point)
    {
        if (!_said.TryGetValue(point.Item.Kind.Name, out List<LessonPoint>? said))
        {
            _said[point.Item.Kind.Name] = said = [];
        }

        LessonPoint told = point.After(said);
        said.Add(point);
        return told;
    }

    private bool IsNew(Question question) => question.Answer.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Length < WordsOfTheSame || _answered.Add(question.Answer);
}
