using System.Globalization;
using System.Text;
using Sightglass.Cli.Runs;

namespace Sightglass.Cli.Output;

/// <summary>Samples as comma-separated values: the time in seconds, then each column in the unit its head names; full precision.</summary>
internal static class CsvText
{
    public static string Of(Recorder recorder)
    {
        StringBuilder text = new();
        text.AppendJoin(',', recorder.Columns.Select(c => Cell(c.Unit.Symbol == "1" ? c.Name : $"{c.Name} [{c.Unit.Symbol}]")).Prepend("time_s")).Append('\n');
        foreach ((Basics.Time.SimTime time, double[] values) in recorder.Rows)
        {
            text.Append(Number(time.Seconds));
            for (int i = 0; i < values.Length; i++)
            {
                Column column = recorder.Columns[i];
                text.Append(',').Append(column.Sort == ColumnSort.Quantity ? Number(column.InUnit(values[i])) : Cell(column.Text(values[i])));
            }

            text.Append('\n');
        }

        return text.ToString();
    }

    private static string Number(double value) => double.IsFinite(value) ? value.ToString("R", CultureInfo.InvariantCulture) : "";

    /// <summary>A field: in quotes where it must be, and with an apostrophe before what a spreadsheet would take for a formula.</summary>
    public static string Cell(string text)
    {
        bool formula = text.Length > 0 && text[0] is '=' or '+' or '-' or '@' or '\t' && !double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out _);
        string field = formula ? $"'{text}" : text;
        return field.AsSpan().IndexOfAny(",\"\n\r") < 0 ? field : $"\"{field.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
    }
}
