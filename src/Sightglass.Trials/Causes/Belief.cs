namespace Sightglass.Trials.Causes;

/// <summary>How likely each cause is after what was looked at. Source: Bayes' rule, with looks that know of each other by the cause alone.</summary>
public sealed class Belief
{
    private readonly CauseTable _table;
    private readonly double[] _logs;

    /// <summary>Before anything was looked at.</summary>
    public Belief(CauseTable table)
    {
        ArgumentNullException.ThrowIfNull(table);
        _table = table;
        _logs = [.. table.Causes.Select(c => Math.Log(c.Likelihood))];
    }

    /// <summary>Takes in what a look shows: −1, 0, 1 for lower than usual, as usual, higher.</summary>
    public void Take(int look, int shows)
    {
        for (int c = 0; c < _logs.Length; c++)
        {
            _logs[c] += _table.LogOf(c, look, shows);
        }
    }

    /// <summary>Of all causes, together 1.</summary>
    public double[] Shares()
    {
        double most = _logs.Max();
        double[] shares = [.. _logs.Select(l => Math.Exp(l - most))];
        double sum = shares.Sum();
        return [.. shares.Select(s => s / sum)];
    }

    /// <summary>Numbers of the causes, the likeliest first; equals in the order of the book.</summary>
    public int[] Ranked()
    {
        double[] shares = Shares();
        return [.. Enumerable.Range(0, shares.Length).OrderByDescending(c => shares[c])];
    }
}
