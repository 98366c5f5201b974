namespace Sightglass.Bench;

/// <summary>A page of results, written to bench/results and to the terminal as it grows.</summary>
internal sealed class Report : IDisposable
{
    private readonly StreamWriter _file;

    private Report(string path) => _file = new(path);

    public static Report For(string subject)
    {
        string day = TimeProvider.System.GetUtcNow().ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
        Directory.CreateDirectory(Paths.Results);
        Report report = new(Path.Combine(Paths.Results, $"{subject}.md"));
        report.Line($"# {char.ToUpperInvariant(subject[0])}{subject[1..]}, {day}");
        report.Line();
        foreach (string line in Machine.Describe())
        {
            report.Line(line);
        }

        return report;
    }

    public void Dispose() => _file.Dispose();

    public void Section(string title)
    {
        Line();
        Line("## " + title);
        Line();
    }

    public void Header(params string[] columns)
    {
        Row(columns);
        Row([.. columns.Select(_ => "---")]);
    }

    public void Row(params string[] cells) => Line("| " + string.Join(" | ", cells) + " |");

    public void Line(string text = "")
    {
        Console.WriteLine(text);
        _file.WriteLine(text);
        _file.Flush();
    }
}
