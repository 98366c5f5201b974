namespace Sightglass.Network.Compile;

/// <summary>
/// Orders the rows for elimination: least degree first, ties by number; boundaries last, since they are not eliminated: their potentials are in no column.
/// </summary>
internal static class EliminationOrder
{
    /// <param name="pattern">For each row the columns it has; not looked at for rows to be put at the end.</param>
    /// <param name="last">Rows to be put at the end.</param>
    /// <returns>order[k] = the row eliminated k-th.</returns>
    public static int[] MinimumDegree(HashSet<int>[] pattern, bool[] last)
    {
        int n = pattern.Length;
        HashSet<int>[] near = new HashSet<int>[n];
        for (int i = 0; i < n; i++)
        {
            near[i] = [];
        }

        foreach (int i in Enumerable.Range(0, n).Where(i => !last[i]))
        {
            foreach (int j in pattern[i].Where(j => j != i))
            {
                near[i].Add(j);
                near[j].Add(i);
            }
        }

        SortedSet<(int Degree, int Row)> queue = [];
        for (int i = 0; i < n; i++)
        {
            if (!last[i])
            {
                queue.Add((near[i].Count, i));
            }
        }

        List<int> order = [];
        while (queue.Count > 0)
        {
            int row = queue.Min.Row;
            queue.Remove(queue.Min);
            order.Add(row);
            int[] around = [.. near[row].Order()];
            foreach (int j in around)
            {
                queue.Remove((near[j].Count, j));
                near[j].Remove(row);
            }

            foreach (int j in around)
            {
                near[j].UnionWith(around.Where(k => k != j));
            }

            foreach (int j in around)
            {
                queue.Add((near[j].Count, j));
            }
        }

        order.AddRange(Enumerable.Range(0, n).Where(i => last[i]));
        return [.. order];
    }
}
