using System.Collections.Immutable;
using Sightglass.Book.Model;
using Sightglass.Training.Routes;

namespace Sightglass.Training.Lessons;

/// <summary>One stop of a lesson.</summary>
/// <param name="Stop">Of its route.</param>
/// <param name="Points">What is said there.</param>
/// <param name="Questions">What is asked there.</param>
/// <param name="Turns">In how many turns one group comes by.</param>
/// <param name="Seconds">Standing there, all turns together, without the walk to it.</param>
public sealed record LessonStop(RouteStop Stop, ImmutableArray<LessonPoint> Points, ImmutableArray<Question> Questions, int Turns, double Seconds)
{
    /// <summary>What is told before anything else: the dangers of the place and of touching, then what the items there warn of, each once.</summary>
    public ImmutableArray<Caution> Cautions { get; } = CautionsOf(Stop);

    internal static ImmutableArray<Caution> CautionsOf(RouteStop stop) =>
    [
        .. stop.Hazards.Concat(stop.OnTouch).Select(h => h.Caution)
            .Concat(stop.Items.SelectMany(i => i.Cautions).Where(c => c.Word is SignalWord.Danger or SignalWord.Warning))
            .DistinctBy(c => c.Text),
    ];
}
