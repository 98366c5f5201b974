using Sightglass.Network.Groups;
using Sightglass.Reference.Tests.Networks;

namespace Sightglass.Reference.Tests.Runs;

/// <summary>The same variations of a problem as the baseline program makes (<c>vary</c> in bench/cvode/net.h).</summary>
public static class LaneVariation
{
    /// <summary>Changes a freshly loaded lane; variation 0 leaves it as it is.</summary>
    public static void Apply(ReferenceNetwork network, LaneGroup group, int lane, int variation)
    {
        if (variation == 0)
        {
            return;
        }

        NetFile file = network.File;
        uint seed = unchecked(12345u + ((uint)variation * 2654435761u));
        double Next()
        {
            seed = unchecked((seed * 1664525u) + 1013904223u);
            return (seed >> 8) * (1.0 / 16777216.0);
        }

        for (int i = 0; i < file.Orifices.Length; i++)
        {
            if (file.Orifices[i].Tag == 1)
            {
                group.SetParameter(lane, network.SizeOfOrifice(i), 0.001 + (0.012 * Next()));
            }
        }

        for (int i = 0; i < file.Nodes.Length; i++)
        {
            double r = Next();
            NodeRow node = file.Nodes[i];
            double start = file.Orifices.Length == 0 ? node.Start * (0.9 + (0.2 * r))
                : node.Name.StartsWith('Z') ? node.Start : NetFile.Atmosphere + (2 * r);
            group.SetAmount(lane, network.Nodes[i], network.AmountAt(i, start));
        }

        for (int i = 0; i < file.Heads.Length; i++)
        {
            if (file.Heads[i].B < 0)
            {
                group.SetParameter(lane, network.SizeOfHead(i), file.Heads[i].K * (0.5 + Next()));
            }
        }
    }
}
