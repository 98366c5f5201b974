using System.Text;

namespace Sightglass.Book.Changes;

/// <summary>The lines in which two texts differ, as a unified diff of one stretch: a change touches one place.</summary>
public static class UnifiedDiff
{
    private const int Around = 3;

    /// <summary>Empty where they are the same.</summary>
    /// <param name="path">As it stands in the heading.</param>
    /// <param name="before">The old text.</param>
    /// <param name="after">The new one.</param>
    public static string Of(string path, string before, string after)
    {
        ArgumentNullException.ThrowIfNull(path);
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        string[] old = Lines(before), now = Lines(after);
        int head = 0;
        while (head < Math.Min(old.Length, now.Length) && old[head] == now[head])
        {
            head++;
        }

        int tail = 0;
        while (tail < Math.Min(old.Length, now.Length) - head && old[^(tail + 1)] == now[^(tail + 1)])
        {
            tail++;
        }

        if (head == old.Length && head == now.Length)
        {
            return "";
        }

        int from = Math.Max(0, head - Around), behind = Math.Min(Around, tail);
        StringBuilder diff = new();
        diff.Append("--- ").Append(path).Append("\n+++ ").Append(path).Append("\n@@ -").Append(Stretch(from, old.Length - tail + behind)).Append(" +").Append(Stretch(from, now.Length - tail + behind)).Append(" @@\n");
        Add(diff, ' ', old.AsSpan(from, head - from));
        Add(diff, '-', old.AsSpan(head, old.Length - tail - head));
        Add(diff, '+', now.AsSpan(head, now.Length - tail - head));
        Add(diff, ' ', old.AsSpan(old.Length - tail, behind));
        return diff.ToString();
    }

    /// <summary>The ends of lines stay with them, so that a text without a last one differs from a text with it.</summary>
    private static string[] Lines(string text)
    {
        List<string> lines = [];
        for (int at = 0; at < text.Length;)
        {
            int end = text.IndexOf('\n', at);
            end = end < 0 ? text.Length : end + 1;
            lines.Add(text[at..end]);
            at = end;
        }

        return [.. lines];
    }

    private static string Stretch(int from, int to) => FormattableString.Invariant($"{(to == from ? from : from + 1)},{to - from}");

    private static void Add(StringBuilder diff, char mark, ReadOnlySpan<string> lines)
    {
        foreach (string line in lines)
        {
            diff.Append(mark).Append(line.TrimEnd('\r', '\n')).Append('\n');
            if (!line.EndsWith('\n'))
            {
                diff.Append("\\ No newline at end of file\n");
            }
        }
    }
}
