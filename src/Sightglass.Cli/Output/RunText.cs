using Sightglass.Cli.Runs;
using Sightglass.World.Journal;
using Spectre.Console;
using Recorder = Sightglass.Cli.Runs.Recorder;

namespace Sightglass.Cli.Output;

/// <summary>A run for a reader at a terminal: the story, then what was seen.</summary>
internal static class RunText
{
    public static void Print(TextWriter output, RunResult result)
    {
        RunRequest request = result.Request;
        string road = request.Plan.Book.RoadNumberInUse is { } number ? $" {number}" : "";
        output.WriteLine($"{request.Plan.Book.Title}{road}: {request.StartName}, seed {request.Seed}, case {request.Case}{(request.Title is null ? "" : $"; card: {request.Title}")}");
        foreach (JournalEntry entry in result.Journal)
        {
            output.WriteLine(StoryLine.Text(entry));
        }

        if (result.Recorder.Columns.Count > 0 && result.Recorder.Rows.Count > 0)
        {
            output.WriteLine();
            PrintColumns(output, result.Recorder);
        }

        output.WriteLine();
        if (result.Trouble is { } trouble)
        {
            output.WriteLine($"Undecided: {trouble}.");
        }

        if (result.Recorded is { } recorded)
        {
            output.WriteLine(result.IsOtherThanRecorded ? $"The session was closed with another hash, {recorded}." : "The session was closed with the same hash.");
        }

        output.WriteLine($"Ran {Clock.Text(result.End)} in {result.Steps} steps; hash {result.Hash:x16}; {BuildName.Text}");
    }

    private static void PrintColumns(TextWriter output, Recorder recorder)
    {
        Table table = new Table().Border(TableBorder.Simple).AddColumns("", "start", "least", "greatest", "end");
        for (int i = 0; i < recorder.Columns.Count; i++)
        {
            Column column = recorder.Columns[i];
            double[] values = [.. recorder.Rows.Select(r => r.Values[i])];
            bool ordered = column.Sort == ColumnSort.Quantity;
            table.AddRow(
                Markup.Escape(column.Name),
                Markup.Escape(column.Text(values[0])),
                ordered ? Markup.Escape(column.Text(values.Min())) : "",
                ordered ? Markup.Escape(column.Text(values.Max())) : "",
                Markup.Escape(column.Text(values[^1])));
        }

        IAnsiConsole console = AnsiConsole.Create(new AnsiConsoleSettings { Out = new AnsiConsoleOutput(output), Ansi = AnsiSupport.No, ColorSystem = ColorSystemSupport.NoColors });
        console.Profile.Width = 140;
        console.Write(table);
    }
}
