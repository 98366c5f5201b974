namespace Sightglass.Basics.Diagnostics;

/// <summary>Finds the names in scope that a mistyped one may have meant.</summary>
public static class Nearest
{
    /// <summary>
    /// <c>did you mean `x`?</c> for the nearest name within a third of the length (at least 1, at most 4 edits), or null.
    /// </summary>
    public static string? DidYouMean(string typed, IEnumerable<string> names)
    {
        string? best = Find(typed, names);
        return best is null ? null : $"did you mean `{best}`?";
    }

    /// <summary>The nearest name, ties by ordinal order, or null when none is near.</summary>
    public static string? Find(string typed, IEnumerable<string> names)
    {
        ArgumentNullException.ThrowIfNull(typed);
        ArgumentNullException.ThrowIfNull(names);
        if (typed.Length > 200)
        {
            return null;
        }

        int limit = Math.Clamp(typed.Length / 3, 1, 4);
        string? best = null;
        int bestDistance = limit + 1;
        foreach (string name in names)
        {
            if (Math.Abs(name.Length - typed.Length) > limit || name.Length > 200)
            {
                continue;
            }

            int d = Distance(typed.ToLowerInvariant(), name.ToLowerInvariant());
            if (d < bestDistance || (d == bestDistance && best is not null && string.CompareOrdinal(name, best) < 0))
            {
                (best, bestDistance) = (name, d);
            }
        }

        return best;
    }

    /// <summary>Edits (insert, delete, replace, swap of neighbours) between two texts: optimal string alignment distance.</summary>
    public static int Distance(string a, string b)
    {
        ArgumentNullException.ThrowIfNull(a);
        ArgumentNullException.ThrowIfNull(b);
        int[,] d = new int[a.Length + 1, b.Length + 1];
        for (int i = 0; i <= a.Length; i++)
        {
            d[i, 0] = i;
        }

        for (int j = 0; j <= b.Length; j++)
        {
            d[0, j] = j;
        }

        for (int i = 1; i <= a.Length; i++)
        {
            for (int j = 1; j <= b.Length; j++)
            {
                int cost = a[i - 1] == b[j - 1] ? 0 : 1;
                d[i, j] = Math.Min(Math.Min(d[i - 1, j] + 1, d[i, j - 1] + 1), d[i - 1, j - 1] + cost);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                {
                    d[i, j] = Math.Min(d[i, j], d[i - 2, j - 2] + 1);
                }
            }
        }

        return d[a.Length, b.Length];
    }
}
