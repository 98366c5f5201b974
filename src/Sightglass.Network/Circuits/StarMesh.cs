using Sightglass.Network.Compile;

namespace Sightglass.Network.Circuits;

/// <summary>
/// Elimination of the free nodes of a net of conductances, one star after the other replaced by the mesh between its ends: g_ij += g_i·g_j/Σg. Nothing is ever
/// subtracted, so that conductances of 10⁻⁹ and 10³ S stand side by side without loss, and a sum of zero means exactly that a node is joined to nothing further.
/// Source: star–mesh transformation (Rosen 1924; any text of circuit theory, from memory).
/// </summary>
internal static class StarMesh
{
    /// <summary>Turns conductances, one a place, into the shares by which a node follows its later neighbours, and 1/Σg of every free node: 0 of one that nothing holds.</summary>
    public static void Eliminate(SymmetricPlan plan, Span<double> places, Span<double> inverses)
    {
        int mesh = 0;
        for (int k = 0; k < plan.Free; k++)
        {
            Span<double> star = places[plan.First[k]..plan.First[k + 1]];
            double sum = 0;
            foreach (double g in star)
            {
                sum += g;
            }

            double inverse = sum > 0 ? 1 / sum : 0;
            inverses[k] = inverse;
            for (int i = 0; i < star.Length; i++)
            {
                double g = star[i];
                star[i] = g * inverse;
                for (int j = i + 1; j < star.Length; j++, mesh++)
                {
                    if (plan.Meshes[mesh] >= 0)
                    {
                        places[plan.Meshes[mesh]] += star[i] * star[j];
                    }
                }
            }
        }
    }

    /// <summary>Potentials from currents driven into the nodes, by position: those of held nodes stand in it, those of free ones are replaced.</summary>
    public static void Solve(SymmetricPlan plan, ReadOnlySpan<double> shares, ReadOnlySpan<double> inverses, Span<double> values)
    {
        for (int k = 0; k < plan.Free; k++)
        {
            double driven = values[k];
            for (int i = plan.First[k]; i < plan.First[k + 1] && driven != 0; i++)
            {
                if (plan.Ends[i] < plan.Free)
                {
                    values[plan.Ends[i]] += driven * shares[i];
                }
            }
        }

        for (int k = plan.Free - 1; k >= 0; k--)
        {
            double v = values[k] * inverses[k];
            for (int i = plan.First[k]; i < plan.First[k + 1]; i++)
            {
                v += shares[i] * values[plan.Ends[i]];
            }

            values[k] = v;
        }
    }

    /// <summary>For every position the one from which its island's potentials count; −1 where a held node is in the island.</summary>
    public static void Root(SymmetricPlan plan, ReadOnlySpan<double> shares, Span<int> roots)
    {
        roots[plan.Free..].Fill(-1);
        for (int k = plan.Free - 1; k >= 0; k--)
        {
            roots[k] = k;
            for (int i = plan.First[k]; i < plan.First[k + 1]; i++)
            {
                if (shares[i] > 0)
                {
                    roots[k] = roots[plan.Ends[i]];
                    break;
                }
            }
        }
    }
}
