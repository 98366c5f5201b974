using System.Globalization;
using System.Text;

namespace Sightglass.Training.Lessons;

/// <summary>A narration as captions. Source: WebVTT: The Web Video Text Tracks Format, W3C Candidate Recommendation, 4 April 2019, section 4.</summary>
public static class WebVtt
{
    /// <summary>Letters in a line of a caption; two lines stand at a time (common practice, no source).</summary>
    private const int Width = 42;

    /// <summary>The file's text, lines ended with a line feed; to be written as UTF-8.</summary>
    public static string Write(IEnumerable<SpokenLine> lines)
    {
        ArgumentNullException.ThrowIfNull(lines);
        StringBuilder file = new("WEBVTT\n");
        string? place = null;
        int number = 0;
        foreach (SpokenLine line in lines)
        {
            if (line.Place != place)
            {
                place = line.Place;
                file.Append("\nNOTE ").Append(place.Replace("-->", "→", StringComparison.Ordinal)).Append('\n');
            }

            foreach ((string text, double from, double to) in Cues(line))
            {
                file.Append('\n').Append((++number).ToString(CultureInfo.InvariantCulture)).Append('\n');
                file.Append(Time(from)).Append(" --> ").Append(Time(to)).Append('\n').Append(text).Append('\n');
            }
        }

        return file.ToString();
    }

    /// <summary>Two lines at a time, each as long as its share of the sentence's letters.</summary>
    private static IEnumerable<(string Text, double From, double To)> Cues(SpokenLine line)
    {
        string[] rows = [.. Rows(line.Text)];
        double letters = rows.Sum(r => r.Length);
        double said = 0;
        foreach (string[] pair in rows.Chunk(2))
        {
            double from = line.From + ((line.To - line.From) * said / letters);
            said += pair.Sum(r => r.Length);
            yield return (string.Join('\n', pair.Select(Escape)), from, line.From + ((line.To - line.From) * said / letters));
        }
    }

    private static IEnumerable<string> Rows(string text)
    {
        string row = "";
        foreach (string word in text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries))
        {
            if (row.Length > 0 && row.Length + 1 + word.Length > Width)
            {
                yield return row;
                row = "";
            }

            row += row.Length == 0 ? word : " " + word;
        }

        yield return row;
    }

    private static string Escape(string text) => text.Replace("&", "&amp;", StringComparison.Ordinal).Replace("<", "&lt;", StringComparison.Ordinal).Replace(">", "&gt;", StringComparison.Ordinal);

    private static string Time(double seconds) => TimeSpan.FromMilliseconds(Math.Round(1000 * seconds)) is var t
        ? string.Create(CultureInfo.InvariantCulture, $"{(int)t.TotalHours:00}:{t.Minutes:00}:{t.Seconds:00}.{t.Milliseconds:000}")
        : "";
}
