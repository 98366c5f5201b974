using System.Collections.Immutable;
using Sightglass.Basics.Time;
using Sightglass.Plant.Signals;
using Sightglass.World.Agenda;
using Sightglass.World.People;

namespace Sightglass.Web.Room;

/// <summary>Keeps what a drill has been: few moments, however long it goes on. It only looks, and changes nothing.</summary>
/// <param name="topics">What is looked at.</param>
internal sealed class DrillTracer(DrillTopics topics)
{
    /// <summary>Moments kept; beyond them every second one is let go.</summary>
    private const int MostMoments = 400;

    private readonly DrillTopic[] _topics = [.. topics.All];
    private readonly List<DrillMoment> _moments = [];
    private readonly List<List<(SimTime At, string? Place)>> _walks = [];
    private double _step = 1;

    /// <summary>Of each objective how far it has come.</summary>
    public ImmutableArray<DrillProgress> Progress { get; private set; } = [];

    /// <summary>What was seen so far.</summary>
    public DrillTrace Trace => new([.. _moments], [.. _walks.Select(w => w.ToImmutableArray())]);

    /// <summary>Whether another moment is to be kept by then.</summary>
    public bool IsDue(SimTime at) => _moments.Count == 0 || at.Seconds >= _moments[^1].Seconds + _step;

    /// <summary>Looks at the world as it stands.</summary>
    /// <param name="world">The drill's.</param>
    /// <param name="inView">Whether the machine is in view: without it, only at its people.</param>
    /// <returns>Everybody as they are now.</returns>
    public ImmutableArray<PersonLook> Look(World.World world, bool inView)
    {
        double now = world.Now.Seconds;
        if (inView && IsDue(world.Now))
        {
            _moments.Add(new(now, [.. _topics.Select(t => world.Value(t.Signal))]));
            int[] so = [.. topics.Parts.Select(p => p.Count(s => world.Value(s) >= 0))];
            Progress = [.. so.Select((n, i) => new DrillProgress(i < Progress.Length ? Progress[i].AtStart : n, n, topics.Parts[i].Length))];
            if (_moments.Count > MostMoments)
            {
                _step *= 2;
                DrillMoment[] kept = [.. _moments.Where((_, i) => i % 2 == 0)];
                _moments.Clear();
                _moments.AddRange(kept);
            }
        }

        return [.. world.People.Select(p => Look(world, p))];
    }

    private PersonLook Look(World.World world, Person person)
    {
        while (_walks.Count <= person.Id)
        {
            _walks.Add([]);
        }

        List<(SimTime At, string? Place)> walk = _walks[person.Id];
        string? place = world.PlaceOf(person);
        if (walk.Count == 0 || walk[^1].Place != place)
        {
            walk.Add((world.Now, place));
        }

        string from = place ?? walk.FindLast(w => w.Place is not null).Place ?? "";
        return new(
            person.Role.Name, place, from, person.Towards < 0 ? null : world.Plan.Ways.Places[person.Towards].Name, person.Deed, world.Agenda.TimeOf(AgendaKind.Person, person.Id), walk[^1].At);
    }
}
