using Sightglass.Network.Compile;

namespace Sightglass.Network.Circuits;

/// <summary>
/// Elimination of the free nodes of a net of conductances with electromotive forces in them, one star after the other replaced by the mesh between its ends: g_ij += g_i·g_j/Σg with the force
/// e_j − e_i. Conductances are never subtracted and no current is ever driven into a node, so that a source of thousands of amperes may hang on an insulation of megohms: potentials are right to
/// rounding of the volts there are. A sum of zero means exactly that a node is joined to nothing further. Source: star–mesh transformation (Rosen 1924; any text of circuit theory, from memory).
/// </summary>
internal static class StarMesh
{
    /// <summary>Completes the conductances of all stars, and finds the shares by which a node follows its later neighbours: 0 of one that nothing holds.</summary>
    /// <param name="conductances">S, one a place: in, those of the branches; out, with those of the meshes.</param>
    public static void Eliminate(SymmetricPlan plan, Span<double> conductances, Span<double> shares)
    {
        int mesh = 0;
        for (int k = 0; k < plan.Free; k++)
        {
            Span<double> star = conductances[plan.First[k]..plan.First[k + 1]];
            Span<double> own = shares[plan.First[k]..plan.First[k + 1]];
            double sum = 0;
            foreach (double g in star)
            {
                sum += g;
            }

            double inverse = sum > 0 ? 1 / sum : 0;
            for (int i = 0; i < star.Length; i++)
            {
                own[i] = star[i] * inverse;
                for (int j = i + 1; j < star.Length; j++, mesh++)
                {
                    if (plan.Meshes[mesh] >= 0)
                    {
                        conductances[plan.Meshes[mesh]] += own[i] * star[j];
                    }
                }
            }
        }
    }

    /// <summary>Potentials by position: those of held nodes stand in it, those of free ones are put in.</summary>
    /// <param name="driven">In, for every place the sum of conductance times force of its branches, A, a force counting from the earlier node to the later; out, the forces, V.</param>
    public static void Solve(SymmetricPlan plan, ReadOnlySpan<double> conductances, ReadOnlySpan<double> shares, Span<double> driven, Span<double> values)
    {
        int mesh = 0;
        for (int k = 0; k < plan.Free; k++)
        {
            Span<double> forces = driven[plan.First[k]..plan.First[k + 1]];
            ReadOnlySpan<double> star = conductances[plan.First[k]..plan.First[k + 1]];
            ReadOnlySpan<double> own = shares[plan.First[k]..plan.First[k + 1]];
            bool any = false;
            for (int i = 0; i < forces.Length; i++)
            {
                forces[i] = forces[i] == 0 ? 0 : forces[i] / star[i];
                any |= forces[i] != 0;
            }

            if (!any)
            {
                mesh += forces.Length * (forces.Length - 1) / 2;
                continue;
            }

            for (int i = 0; i < forces.Length; i++)
            {
                for (int j = i + 1; j < forces.Length; j++, mesh++)
                {
                    if (plan.Meshes[mesh] >= 0)
                    {
                        driven[plan.Meshes[mesh]] += own[i] * star[j] * (forces[j] - forces[i]);
                    }
                }
            }
        }

        for (int k = plan.Free - 1; k >= 0; k--)
        {
            double v = 0;
            for (int i = plan.First[k]; i < plan.First[k + 1]; i++)
            {
                v += shares[i] * (values[plan.Ends[i]] - driven[i]);
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
