using System.Collections.Immutable;
using Sightglass.Drawing.Diagram;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Web.Live;

/// <summary>A line that goes through a train, with the pressures to be watched along it.</summary>
/// <param name="System">Whose line it is.</param>
/// <param name="Name">As drawn: <c>Brake pipe</c>.</param>
/// <param name="Points">Signals and metres from the head of the train.</param>
public sealed record AlongTrain(string System, string Name, ImmutableArray<(Signal Pressure, double X)> Points)
{
    /// <summary>Seconds between looks, and between the moments that are kept of the last seconds: an emergency runs through a train in one.</summary>
    public const double LookStep = 0.1;

    /// <summary>How close together moments are kept, by how long ago they were; older ones farther apart.</summary>
    private static readonly (double Within, double Step)[] s_kept = [(5, LookStep), (60, 0.5), (Sampler.TraceSeconds, 10)];

    /// <summary>One for each living system that has such a line, where the plan is of a train.</summary>
    public static ImmutableArray<AlongTrain> Of(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return plan.Book.Vehicles.Length < 2 ? [] : [.. LivingSystems.Of(plan.Book).Select(s => Of(plan, s)).OfType<AlongTrain>()];
    }

    /// <summary>What was kept with the present added, and what is too old or too close together left out.</summary>
    internal ImmutableArray<AlongPoint> Longer(ImmutableArray<AlongPoint> before, World.World world)
    {
        double now = world.Now.Seconds;
        AlongPoint present = new(now, [.. Points.Select(p => world.Value(p.Pressure))]);
        List<AlongPoint> kept = [];
        foreach (AlongPoint point in before.Where(p => p.Seconds < now && p.Seconds >= now - Sampler.TraceSeconds))
        {
            double step = Array.Find(s_kept, k => now - point.Seconds <= k.Within).Step;
            if (kept.Count == 0 || point.Seconds - kept[^1].Seconds >= step - 1e-6)
            {
                kept.Add(point);
            }
        }

        return [.. kept, present];
    }

    private static AlongTrain? Of(Plan plan, string system)
    {
        if (ThroughLine.LongestOf(DiagramInput.Of(plan.Book, system)) is not { } line)
        {
            return null;
        }

        double head = plan.Book.Vehicles.Min(v => v.From);
        ImmutableArray<(Signal, double)> points = [.. line.Points.Select(p => (Signal: plan.FindSignal($"pressure of {p.Node}"), X: p.X - head)).Where(p => p.Signal is not null).Select(p => (p.Signal!, p.X))];
        return points.Length < 2 ? null : new(system, line.Name, points);
    }
}
