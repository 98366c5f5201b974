using System.Globalization;

namespace Sightglass.Book.Readers;

/// <summary>Checks drawing paths: commands with the right count of numbers, as in SVG 1.1 path data (from memory).</summary>
internal static class PathData
{
    private const string Commands = "MLHVCSQTAZ";
    private static readonly int[] s_counts = [2, 2, 1, 1, 6, 4, 4, 2, 7, 0];

    /// <summary>What is wrong with a path, or null.</summary>
    public static string? Problem(string path)
    {
        string[] words = Words(path);
        if (words.Length == 0 || words[0] is not ("M" or "m"))
        {
            return "the path does not begin with `M`";
        }

        int i = 0;
        while (i < words.Length)
        {
            int command = words[i].Length == 1 ? Commands.IndexOf(char.ToUpperInvariant(words[i][0]), StringComparison.Ordinal) : -1;
            if (command < 0)
            {
                return $"`{Short(words[i])}` is not understood in a path";
            }

            int numbers = words.Skip(i + 1).TakeWhile(IsNumber).Count();
            int each = s_counts[command];
            if (each == 0 ? numbers > 0 : numbers == 0 || numbers % each != 0)
            {
                return $"`{words[i]}` has {(numbers == 1 ? "1 number" : $"{numbers} numbers")} instead of {(each == 0 ? "none" : $"{each} or a multiple")}";
            }

            i += numbers + 1;
        }

        return null;
    }

    private static bool IsNumber(string word) => double.TryParse(word, NumberStyles.Float, CultureInfo.InvariantCulture, out double d) && double.IsFinite(d);

    private static string Short(string word) => word.Length <= 20 ? word : word[..20];

    private static string[] Words(string path)
    {
        List<string> words = [];
        int start = -1;
        for (int i = 0; i <= path.Length; i++)
        {
            char c = i < path.Length ? path[i] : ' ';
            bool letter = char.IsLetter(c) && c is not ('e' or 'E');
            bool sign = c is '-' or '+' && start >= 0 && path[i - 1] is not ('e' or 'E');
            if (start >= 0 && (c == ',' || char.IsWhiteSpace(c) || letter || sign))
            {
                words.Add(path[start..i]);
                start = -1;
            }

            if (letter)
            {
                words.Add(path.Substring(i, 1));
            }
            else if (start < 0 && c != ',' && !char.IsWhiteSpace(c))
            {
                start = i;
            }
        }

        return [.. words];
    }
}
