using Sightglass.Drawing.Labels;
using Sightglass.Drawing.Shapes;

namespace Sightglass.Drawing.Tests.Labels;

/// <summary>What must hold for flags wherever they were put.</summary>
internal static class FlagGeometry
{
    public const double Height = 16;
    public const double Pitch = Height + FlagPlacer.Gap;

    /// <summary>The first fault found, or null.</summary>
    public static string? Fault(IReadOnlyList<FlagPlace> flags)
    {
        for (int i = 0; i < flags.Count; i++)
        {
            for (int j = 0; j < flags.Count; j++)
            {
                if (i == j)
                {
                    continue;
                }

                if (Box(flags[i]).DistanceTo(Box(flags[j])) < FlagPlacer.Gap - 1e-9)
                {
                    return $"flags {i} and {j} are {Box(flags[i]).DistanceTo(Box(flags[j]))} px apart: {flags[i]} {flags[j]}";
                }

                bool reaches = flags[j].Tier > flags[i].Tier;
                if (reaches && flags[j].Pole > flags[i].Left - FlagPlacer.Clearance + 1e-9 && flags[j].Pole < flags[i].Right + FlagPlacer.Clearance - 1e-9)
                {
                    return $"flag {i} is over the pole of {j}: {flags[i]} {flags[j]}";
                }
            }
        }

        return null;
    }

    private static Bounds Box(FlagPlace flag) => new(flag.Left, flag.Tier * Pitch, flag.Right, (flag.Tier * Pitch) + Height);
}
