using Sightglass.Basics.Time;

namespace Sightglass.Cli.Runs;

/// <summary>That a run is kept in a file as it goes, so that it can be taken up where it was broken off.</summary>
/// <param name="Path">The file.</param>
/// <param name="Every">Time of the run between two savings.</param>
/// <param name="Folder">Of the book.</param>
/// <param name="Card">As it was named, or null.</param>
internal sealed record Saving(string Path, SimTime Every, string Folder, string? Card)
{
    /// <summary>Runs a world to an end or its card's, keeping it on the way and where it ended.</summary>
    public void Run(RunRequest request, World.World world, SimTime until)
    {
        SimTime next;
        do
        {
            next = SimTime.Min(world.Now + Every, until);
            world.RunTo(next);
            if (world.Trouble is null)
            {
                SavedRun.Of(request, Folder, Card, world).Write(Path);
            }
        }
        while (world.Trouble is null && world.Now == next && next < until);
    }
}
