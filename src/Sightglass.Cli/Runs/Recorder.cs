using Sightglass.Basics.Time;
using Sightglass.World.Agenda;

namespace Sightglass.Cli.Runs;

/// <summary>Keeps what columns are at regular moments and at the end. Looking changes nothing: the trajectory's bits are the same without it.</summary>
internal sealed class Recorder
{
    private readonly SimTime _every;

    public Recorder(IReadOnlyList<Column> columns, SimTime every) => (Columns, _every) = (columns, every);

    public IReadOnlyList<Column> Columns { get; }

    public List<(SimTime Time, double[] Values)> Rows { get; } = [];

    /// <summary>Has the world call at every moment from now on.</summary>
    public void Attach(World.World world)
    {
        world.OnSample = Take;
        world.Agenda.Remove(AgendaKind.Sample, 0);
        world.SampleAt(world.Now);
    }

    private void Take(World.World world)
    {
        Rows.Add((world.Now, [.. Columns.Select(c => c.Value(world))]));
        world.SampleAt(world.Now + _every);
    }
}
