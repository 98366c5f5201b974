using Sightglass.Basics.Time;
using Sightglass.Network.Groups;
using Sightglass.Plant.Plans;

namespace Sightglass.World.Tests;

/// <summary>Worlds in lanes of one bank, carried on side by side.</summary>
internal static class LanesTogether
{
    /// <summary>Runs each to a limit, or to the end of its card.</summary>
    public static void RunTogether(this LaneBank bank, IReadOnlyList<World> worlds, SimTime limit)
    {
        foreach (World world in worlds)
        {
            world.Limit = limit;
        }

        while (worlds.Aggregate(false, (any, w) => w.Advance() || any))
        {
            foreach (int n in bank.Plan.Stepped)
            {
                LaneGroup group = bank.Group(n);
                while (Enumerable.Range(0, 8).Any(lane => group.Task(lane) != LaneTask.None))
                {
                    group.Iterate();
                }
            }
        }
    }
}
