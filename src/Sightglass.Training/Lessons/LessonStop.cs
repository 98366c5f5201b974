using System.Collections.Immutable;
using Sightglass.Basics.Language;
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
    /// <summary>What is told before anything else, the gravest first: the dangers of the place and of touching, and what the items there warn of.</summary>
    public ImmutableArray<ToldCaution> Cautions { get; init; } = Whole(Stop);

    /// <summary>The cautions as they are read: whole ones each by itself, and those of one word that an earlier stop told whole together.</summary>
    public IEnumerable<(SignalWord Word, string Text)> Notices => Cautions.GroupBy(c => (c.Caution.Word, c.AsAt, Whole: c.AsAt is null ? c.Caution.Text : ""))
        .Select(g => (g.Key.Word, g.Key.AsAt is { } stop ? Say.With($"{string.Join(' ', g.Select(c => c.Text))} As at stop {stop}.") : g.Single().Text));

    /// <summary>Of walking since the stop before it, past what is passed by.</summary>
    public double WalkSeconds { get; init; } = Stop.Seconds;

    internal static ImmutableArray<ToldCaution> Whole(RouteStop stop) =>
    [
        .. stop.Hazards.Concat(stop.OnTouch).Select(h => h.Caution)
            .Concat(stop.Items.SelectMany(i => i.Cautions).Where(c => c.Word is SignalWord.Danger or SignalWord.Warning))
            .GravestFirst().Select(c => new ToldCaution(c, null)),
    ];
}
