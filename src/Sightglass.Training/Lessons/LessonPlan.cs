using System.Collections.Immutable;
using Sightglass.Training.Defects;
using Sightglass.Training.Routes;

namespace Sightglass.Training.Lessons;

/// <summary>A lesson round the machine, planned from the book.</summary>
/// <param name="Request">What was wanted.</param>
/// <param name="Route">The walk that it follows.</param>
/// <param name="Stations">At least one; their groups change together, when the slowest is done.</param>
/// <param name="ChangeSeconds">From one station to the next, the longest of these ways.</param>
/// <param name="Times">How long people take.</param>
public sealed record LessonPlan(LessonRequest Request, RoutePlan Route, ImmutableArray<LessonStation> Stations, double ChangeSeconds, LessonTimes Times)
{
    /// <summary>Edits that fit no more.</summary>
    public ImmutableArray<EditMisfit> Misfits { get; init; } = [];

    /// <summary>What would make it shorter, what gains most first; each was planned.</summary>
    public ImmutableArray<LessonChange> Advice { get; init; } = [];

    /// <summary>Defects of the machine that no stop tells of.</summary>
    public IEnumerable<Defect> OtherDefects => Request.Defects.Except(Stops.SelectMany(s => s.Points).SelectMany(p => p.Defects));

    /// <summary>People in the largest group.</summary>
    public int GroupSize => (Request.People + Stations.Length - 1) / Stations.Length;

    /// <summary>At the station that takes longest: so long every group is at every station.</summary>
    public double LongestStation => Stations.Max(s => s.Seconds);

    /// <summary>Groups that stand idle for a minute or more, each time before all change.</summary>
    public int GroupsWaiting => Stations.Count(s => LongestStation - s.Seconds >= 60);

    /// <summary>The longest of these waits.</summary>
    public double LongestWait => LongestStation - Stations.Min(s => s.Seconds);

    /// <summary>What every group stands idle when it has been at every station.</summary>
    public double WaitSeconds => Stations.Sum(s => LongestStation - s.Seconds);

    /// <summary>From the greeting to the end.</summary>
    public double Seconds => Times.Opening + (Stations.Length * LongestStation) + ((Stations.Length - 1) * ChangeSeconds) + Times.Closing;

    /// <summary>Beyond the minutes that there are; 0 where it fits.</summary>
    public double SecondsTooLong => Request.Minutes is { } there ? Math.Max(0, Seconds - (60 * there)) : 0;

    public IEnumerable<LessonStop> Stops => Stations.SelectMany(s => s.Stops);
}
