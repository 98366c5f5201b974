namespace Sightglass.Training.Lessons;

/// <summary>Goes along the stops of one station and makes short what the same group has been told there before. Another station begins anew: its first group comes from nowhere.</summary>
/// <param name="times">How long people take.</param>
internal sealed class Retelling(LessonTimes times)
{
    private readonly Dictionary<string, int> _told = new(StringComparer.Ordinal);

    /// <summary>The next stop of the station, as long as its cautions take now.</summary>
    /// <param name="stop">With every caution told whole.</param>
    /// <param name="number">Its number in the lesson.</param>
    public LessonStop Next(LessonStop stop, int number)
    {
        LessonStop told = stop with { Cautions = [.. stop.Cautions.Select(c => c with { AsAt = _told.TryGetValue(c.Caution.Text, out int at) && ToldCaution.CanBeShort(c.Caution) ? at : null })] };
        foreach (ToldCaution caution in stop.Cautions)
        {
            _told.TryAdd(caution.Caution.Text, number);
        }

        int saved = stop.Cautions.Sum(c => c.Words) - told.Cautions.Sum(c => c.Words);
        return told with { Seconds = stop.Seconds - (stop.Turns * saved / times.WordsAMinute * 60) };
    }
}
