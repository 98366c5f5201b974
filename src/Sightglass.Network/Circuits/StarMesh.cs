using Sightglass.Network.Compile;

namespace Sightglass.Network.Circuits;

/// <summary>
/// Elimination of the free nodes of a net of conductances, one star after the other replaced by the mesh between its ends: g_ij += g_i·g_j/Σg. Nothing is ever
/// subtracted, so that conductances of 10⁻⁹ and 10³ S stand side by side without loss, and a sum of zero means exactly that a node is joined to nothing further.
/// Source: star–mesh transformation (Rosen 1924; any text of circuit theory, from memory).
/// </summary>
internal sealed class StarMesh
{
    private readonly int[] _first;
    private readonly int[] _ends;
    private readonly int[] _meshes;
    private readonly int[] _positionOf;

    /// <param name="nodes">How many there are.</param>
    /// <param name="held">Whether a node's potential is given.</param>
    /// <param name="joined">Pairs of nodes with a conductance between them.</param>
    public StarMesh(int nodes, bool[] held, IEnumerable<(int A, int B)> joined)
    {
        HashSet<int>[] pattern = [.. Enumerable.Range(0, nodes).Select(_ => new HashSet<int>())];
        foreach ((int a, int b) in joined.Where(j => j.A != j.B))
        {
            pattern[a].Add(b);
            pattern[b].Add(a);
        }

        int[] order = EliminationOrder.MinimumDegree([.. pattern.Select((p, i) => held[i] ? [] : p.Where(j => !held[j]).ToHashSet())], held);
        _positionOf = new int[nodes];
        for (int k = 0; k < nodes; k++)
        {
            _positionOf[order[k]] = k;
        }

        Free = held.Count(h => !h);
        SortedSet<int>[] later = [.. Enumerable.Range(0, nodes).Select(k => new SortedSet<int>(pattern[order[k]].Select(j => _positionOf[j]).Where(j => j > k)))];
        for (int k = 0; k < Free; k++)
        {
            foreach (int i in later[k])
            {
                later[i].UnionWith(later[k].Where(j => j > i));
            }
        }

        _first = new int[Free + 1];
        for (int k = 0; k < Free; k++)
        {
            _first[k + 1] = _first[k] + later[k].Count;
        }

        _ends = [.. later.Take(Free).SelectMany(l => l)];
        _meshes = [.. Meshes(later)];
    }

    /// <summary>How many nodes are free: at the positions below this.</summary>
    public int Free { get; }

    /// <summary>How many conductances are kept.</summary>
    public int Places => _ends.Length;

    public int PositionOf(int node) => _positionOf[node];

    /// <summary>Where a conductance between two nodes is kept; −1 between two that are held, or one and itself.</summary>
    public int PlaceOf(int a, int b)
    {
        int low = Math.Min(_positionOf[a], _positionOf[b]);
        int high = Math.Max(_positionOf[a], _positionOf[b]);
        return low == high || low >= Free ? -1 : Array.BinarySearch(_ends, _first[low], _first[low + 1] - _first[low], high);
    }

    /// <summary>Turns conductances, one a place, into the shares by which a node follows its later neighbours, and 1/Σg of every free node: 0 of one that nothing holds.</summary>
    public void Eliminate(Span<double> places, Span<double> inverses)
    {
        int mesh = 0;
        for (int k = 0; k < Free; k++)
        {
            Span<double> star = places[_first[k].._first[k + 1]];
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
                    if (_meshes[mesh] >= 0)
                    {
                        places[_meshes[mesh]] += star[i] * star[j];
                    }
                }
            }
        }
    }

    /// <summary>Potentials from currents driven into the nodes, by position: those of held nodes stand in it, those of free ones are replaced.</summary>
    public void Solve(ReadOnlySpan<double> shares, ReadOnlySpan<double> inverses, Span<double> values)
    {
        for (int k = 0; k < Free; k++)
        {
            double driven = values[k];
            for (int i = _first[k]; i < _first[k + 1] && driven != 0; i++)
            {
                if (_ends[i] < Free)
                {
                    values[_ends[i]] += driven * shares[i];
                }
            }
        }

        for (int k = Free - 1; k >= 0; k--)
        {
            double v = values[k] * inverses[k];
            for (int i = _first[k]; i < _first[k + 1]; i++)
            {
                v += shares[i] * values[_ends[i]];
            }

            values[k] = v;
        }
    }

    /// <summary>For every position the one from which its island's potentials count; −1 where a held node is in the island.</summary>
    public void Root(ReadOnlySpan<double> shares, Span<int> roots)
    {
        roots[Free..].Fill(-1);
        for (int k = Free - 1; k >= 0; k--)
        {
            roots[k] = k;
            for (int i = _first[k]; i < _first[k + 1]; i++)
            {
                if (shares[i] > 0)
                {
                    roots[k] = roots[_ends[i]];
                    break;
                }
            }
        }
    }

    private IEnumerable<int> Meshes(SortedSet<int>[] later)
    {
        for (int k = 0; k < Free; k++)
        {
            int[] ends = [.. later[k]];
            for (int i = 0; i < ends.Length; i++)
            {
                for (int j = i + 1; j < ends.Length; j++)
                {
                    yield return ends[i] >= Free ? -1 : Array.BinarySearch(_ends, _first[ends[i]], _first[ends[i] + 1] - _first[ends[i]], ends[j]);
                }
            }
        }
    }
}
