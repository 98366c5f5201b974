using System.Runtime.CompilerServices;

namespace Sightglass.Book.Tests.Golden;

/// <summary>The file of verified lines: sections that begin with <c>== code</c>.</summary>
internal sealed class GoldenLines
{
    private static readonly Lock s_lock = new();
    private readonly SortedDictionary<string, List<string>> _sections = new(StringComparer.Ordinal);

    public static bool Accepting => Environment.GetEnvironmentVariable("SIGHTGLASS_ACCEPT") == "1";

    public IReadOnlyList<string> this[string section] => _sections.GetValueOrDefault(section) ?? [];

    public static GoldenLines Load()
    {
        lock (s_lock)
        {
            GoldenLines golden = new();
            List<string>? section = null;
            foreach (string line in File.Exists(FilePath()) ? File.ReadAllLines(FilePath()) : [])
            {
                if (line.StartsWith("== ", StringComparison.Ordinal))
                {
                    golden._sections[line[3..]] = section = [];
                }
                else
                {
                    section?.Add(line);
                }
            }

            return golden;
        }
    }

    public void Accept(string name, IEnumerable<string> lines)
    {
        lock (s_lock)
        {
            GoldenLines now = Load();
            now._sections[name] = _sections[name] = [.. lines];
            File.WriteAllText(FilePath(), string.Concat(now._sections.Select(s => $"== {s.Key}\n{string.Concat(s.Value.Select(l => l + "\n"))}")));
        }
    }

    private static string FilePath([CallerFilePath] string here = "") => Path.Combine(Path.GetDirectoryName(here)!, "diagnostics.verified.txt");
}
