using System.Collections.Immutable;
using System.Globalization;

namespace Sightglass.Reference.Tests.Networks;

/// <summary>Samples over time as a <c>.csv</c> file holds them: the first column is the time in s.</summary>
public sealed record SampleTable(ImmutableArray<string> Columns, ImmutableArray<double> Times, ImmutableArray<ImmutableArray<double>> Rows)
{
    /// <exception cref="FormatException">A row has another number of columns than the head, or a word is no number.</exception>
    public static SampleTable Parse(string text)
    {
        string[] lines = text.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        ImmutableArray<string> head = [.. lines[0].Split(',')];
        ImmutableArray<ImmutableArray<double>> all =
            [.. lines.Skip(1).Select(line => (ImmutableArray<double>)[.. line.Split(',').Select(w => double.Parse(w, CultureInfo.InvariantCulture))])];
        if (all.Any(r => r.Length != head.Length))
        {
            throw new FormatException("A row has another number of columns than the head.");
        }

        return new(head[1..], [.. all.Select(r => r[0])], [.. all.Select(r => r[1..])]);
    }
}
