namespace Sightglass.Network.Compile;

/// <summary>The order and the places of an elimination in which what is between two nodes is the same both ways. Nodes whose value is given come last and are not eliminated.</summary>
internal sealed class SymmetricPlan
{
    private readonly int[] _first;
    private readonly int[] _ends;
    private readonly int[] _meshes;
    private readonly int[] _positionOf;

    /// <param name="nodes">How many there are.</param>
    /// <param name="held">Whether a node's potential is given.</param>
    /// <param name="joined">Pairs of nodes with a value between them.</param>
    public SymmetricPlan(int nodes, bool[] held, IEnumerable<(int A, int B)> joined)
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
        _meshes = [.. FindMeshes(later)];
    }

    /// <summary>How many nodes are free: at the positions below this.</summary>
    public int Free { get; }

    /// <summary>How many values are kept beside the diagonal.</summary>
    public int Places => _ends.Length;

    /// <summary>For every free position the first of its places; one more behind the last.</summary>
    public ReadOnlySpan<int> First => _first;

    /// <summary>For every place the later position that it leads to.</summary>
    public ReadOnlySpan<int> Ends => _ends;

    /// <summary>For every free position and every pair of its places the place that their product goes to; −1 between two that are held.</summary>
    public ReadOnlySpan<int> Meshes => _meshes;

    public int PositionOf(int node) => _positionOf[node];

    /// <summary>Where a value between two nodes is kept; −1 between two that are held, or one and itself.</summary>
    public int PlaceOf(int a, int b)
    {
        int low = Math.Min(_positionOf[a], _positionOf[b]);
        int high = Math.Max(_positionOf[a], _positionOf[b]);
        return low == high || low >= Free ? -1 : Array.BinarySearch(_ends, _first[low], _first[low + 1] - _first[low], high);
    }

    private List<int> FindMeshes(SortedSet<int>[] later)
    {
        List<int> meshes = [];
        for (int k = 0; k < Free; k++)
        {
            int[] ends = [.. later[k]];
            for (int i = 0; i < ends.Length; i++)
            {
                for (int j = i + 1; j < ends.Length; j++)
                {
                    meshes.Add(ends[i] >= Free ? -1 : Array.BinarySearch(_ends, _first[ends[i]], _first[ends[i] + 1] - _first[ends[i]], ends[j]));
                }
            }
        }

        return meshes;
    }
}
