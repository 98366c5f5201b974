using Sightglass.Network.Compile;

namespace Sightglass.Network.Phasors;

/// <summary>Elimination of the free terminals of a net of admittances, the same both ways, without pivoting: passive nets need none. Source: LDLᵀ (any text of linear algebra).</summary>
internal static class PhasorFactors
{
    /// <summary>Turns places into the shares by which a terminal follows its later neighbours, diagonals into their inverses.</summary>
    /// <returns>Whether every terminal had a pivot.</returns>
    public static bool Eliminate(SymmetricPlan plan, Span<Phasor> places, Span<Phasor> diagonals)
    {
        int mesh = 0;
        for (int k = 0; k < plan.Free; k++)
        {
            Span<Phasor> star = places[plan.First[k]..plan.First[k + 1]];
            ReadOnlySpan<int> ends = plan.Ends[plan.First[k]..plan.First[k + 1]];
            Phasor inverse = Phasor.Inverse(diagonals[k]);
            if (!inverse.IsFinite)
            {
                return false;
            }

            diagonals[k] = inverse;
            for (int i = 0; i < star.Length; i++)
            {
                Phasor y = star[i];
                star[i] = -(y * inverse);
                if (ends[i] < plan.Free)
                {
                    diagonals[ends[i]] += star[i] * y;
                }

                for (int j = i + 1; j < star.Length; j++, mesh++)
                {
                    if (plan.Meshes[mesh] >= 0)
                    {
                        places[plan.Meshes[mesh]] += star[i] * star[j];
                    }
                }
            }
        }

        return true;
    }

    /// <summary>Voltages from currents driven in, by position: those of held terminals stand in it, those of free ones are replaced.</summary>
    public static void Solve(SymmetricPlan plan, ReadOnlySpan<Phasor> shares, ReadOnlySpan<Phasor> inverses, Span<Phasor> values)
    {
        ReadOnlySpan<int> first = plan.First;
        ReadOnlySpan<int> ends = plan.Ends;
        for (int k = 0; k < plan.Free; k++)
        {
            Phasor driven = values[k];
            for (int i = first[k]; i < first[k + 1]; i++)
            {
                if (ends[i] < plan.Free)
                {
                    values[ends[i]] += driven * shares[i];
                }
            }
        }

        for (int k = plan.Free - 1; k >= 0; k--)
        {
            Phasor v = values[k] * inverses[k];
            for (int i = first[k]; i < first[k + 1]; i++)
            {
                v += shares[i] * values[ends[i]];
            }

            values[k] = v;
        }
    }
}
