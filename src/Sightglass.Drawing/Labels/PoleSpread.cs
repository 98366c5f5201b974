namespace Sightglass.Drawing.Labels;

/// <summary>Moves poles apart as little as possible.</summary>
internal static class PoleSpread
{
    /// <summary>Least-squares positions at least <paramref name="spacing"/> apart, in the order given (ascending wishes).</summary>
    public static double[] Spread(double[] wishes, double spacing)
    {
        // With y_i = x_i − i·spacing the rule is y ascending: pool neighbours that violate it and take their mean.
        List<(double Sum, int Count)> pools = [];
        for (int i = 0; i < wishes.Length; i++)
        {
            pools.Add((wishes[i] - (i * spacing), 1));
            while (pools.Count > 1 && Mean(pools[^2]) > Mean(pools[^1]))
            {
                (double sum, int count) = pools[^1];
                pools.RemoveAt(pools.Count - 1);
                pools[^1] = (pools[^1].Sum + sum, pools[^1].Count + count);
            }
        }

        double[] poles = new double[wishes.Length];
        int at = 0;
        foreach ((double Sum, int Count) pool in pools)
        {
            for (int k = 0; k < pool.Count; k++, at++)
            {
                poles[at] = Mean(pool) + (at * spacing);
            }
        }

        return poles;
    }

    private static double Mean((double Sum, int Count) pool) => pool.Sum / pool.Count;
}
