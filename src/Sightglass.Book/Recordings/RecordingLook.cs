using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Messages;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Recordings;

/// <summary>What a file of recorded states shows by itself, before anybody has said what its columns are of a book.</summary>
/// <param name="File">Its name.</param>
/// <param name="Separator">What stands between fields.</param>
/// <param name="HasDecimalComma">Whether numbers are written with a comma.</param>
/// <param name="Time">The head of the column that looks like the time; null where none does.</param>
/// <param name="Rows">Rows below the heads that are not blank.</param>
/// <param name="Columns">In the order of the file.</param>
public sealed record RecordingLook(string File, char Separator, bool HasDecimalComma, string? Time, int Rows, ImmutableArray<RecordingLook.Column> Columns)
{
    private const int MostExamples = 4;
    private const int Longest = 30;

    /// <summary>The line of the heads, where something stands over them.</summary>
    public int? HeadLine { get; init; }

    /// <summary>Looks at a file.</summary>
    /// <param name="path">Of the file.</param>
    /// <param name="found">Takes what is wrong with it as a file.</param>
    /// <returns>Null where it cannot be read.</returns>
    public static RecordingLook? At(string path, DiagnosticList found)
    {
        ArgumentNullException.ThrowIfNull(path);
        YamlLimits limits = YamlLimits.Default;
        Findings findings = new(found, limits);
        string folder = Path.GetDirectoryName(Path.GetFullPath(path))!, name = Path.GetFileName(path);
        return new RecordingFolder(folder, limits, findings).Read(name, Span.None) is { } source ? Of(source, findings) : null;
    }

    /// <summary>Looks at the text of a file.</summary>
    public static RecordingLook? At(SourceText source, DiagnosticList found)
    {
        ArgumentNullException.ThrowIfNull(source);
        return Of(source, new Findings(found, YamlLimits.Default));
    }

    private static RecordingLook? Of(SourceText source, Findings found)
    {
        char separator = RecordingHead.SeparatorOf(source, null);
        CsvScanner scanner = new(source.Text, separator);
        Gathered[]? columns = null;
        (int rows, int before, int line) = (0, 0, 0);
        while (scanner.Next())
        {
            if (scanner.IsBlank)
            {
                continue;
            }

            if (columns is null && scanner.Fields.Count(f => scanner.Text(f).Length > 0) < 2)
            {
                before++; // a title over the table
                continue;
            }

            if (columns is null)
            {
                line = source.Locate(scanner.Fields[0].Start).Line;
                columns = [.. scanner.Fields.Select(f => new Gathered(scanner.Text(f)))];
                continue;
            }

            rows++;
            for (int i = 0; i < Math.Min(columns.Length, scanner.Fields.Count); i++)
            {
                columns[i].Add(scanner.Text(scanner.Fields[i]));
            }
        }

        if (scanner.Flaw != CsvFlaw.None || columns is null)
        {
            Span at = source.Between(scanner.FlawAt, scanner.FlawAt);
            found.Add(scanner.Flaw != CsvFlaw.None ? BookMessages.Flawed(at, scanner.Flaw) : BookMessages.EmptyRecording(at, "line of heads"));
            return null;
        }

        bool comma = separator != ',' && columns.Any(c => c.Numbers < c.Commas);
        string? time = (columns.FirstOrDefault(c => c.Clocks > 0 && c.Clocks == c.Filled) ?? columns.FirstOrDefault(c => c.Head.Contains("time", StringComparison.OrdinalIgnoreCase)))?.Head;
        return new(source.Path, separator, comma, time, rows, [.. columns.Select(c => c.Of(comma))]) { HeadLine = before > 0 ? line : null };
    }

    /// <summary>A mapping to be filled in: every column with what it holds, none with what it means.</summary>
    /// <param name="name">What the recording is to be called.</param>
    public string Mapping(string name)
    {
        StringBuilder text = new();
        text.Append("# A first mapping of ").Append(OneLine(File)).Append(": ").Append(Count(Rows, "row")).Append(". Say of each column that matters what it sets at the start of a situation,\n");
        text.Append("# or what it is only compared with; delete the others. The file has to lie in the book's folder.\n");
        text.Append("recordings:\n  ").Append(Quoted(name)).Append(":\n");
        text.Append("    text: \"TO DECIDE: what was recorded, where it comes from and who may see it.\"\n");
        text.Append("    file: ").Append(Quoted($"recordings/{File}")).Append('\n');
        text.Append("    time: ").Append(Quoted(Time ?? "TO DECIDE")).Append('\n');
        text.Append(HeadLine is { } line ? string.Create(CultureInfo.InvariantCulture, $"    heads in line: {line}\n") : "");
        text.Append(HasDecimalComma ? "    decimal: comma\n" : "");
        string[] missing = [.. Columns.Where(c => c.IsNumber).SelectMany(c => c.Others).Distinct(StringComparer.Ordinal)];
        text.Append(missing.Length == 0 ? "" : $"    missing: [{string.Join(", ", missing.Select(Quoted))}]\n");
        text.Append("    columns:\n");
        foreach (Column column in Columns.Where(c => c.Head != Time && c.Head.Length > 0))
        {
            string unit = column.Unit is not null || !column.IsNumber ? "" : ", unit: TO DECIDE";
            text.Append("      # ").Append(OneLine(column.Says)).Append('\n');
            text.Append("      # - { column: ").Append(Quoted(column.Head)).Append(", sets: TO DECIDE, compares: TO DECIDE").Append(unit).Append(column.IsNumber ? "" : ", as: { TO DECIDE: TO DECIDE }").Append(" }\n");
        }

        return text.ToString();
    }

    /// <summary>A text in double quotes as YAML reads it.</summary>
    public static string Quoted(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        StringBuilder quoted = new("\"");
        foreach (char c in text)
        {
            quoted.Append(c is '"' or '\\' ? $"\\{c}" : char.IsControl(c) || char.IsSurrogate(c) ? $"\\u{(int)c:x4}" : c);
        }

        return quoted.Append('"').ToString();
    }

    private static string Count(int number, string noun) => string.Create(CultureInfo.InvariantCulture, $"{number} {noun}{(number == 1 ? "" : "s")}");

    private static string OneLine(string text) => string.Concat(text.Where(c => !char.IsControl(c)));

    /// <summary>One column as it looks.</summary>
    /// <param name="Head">As it stands there.</param>
    /// <param name="Unit">That the head says.</param>
    /// <param name="IsNumber">Whether most of what is there are numbers.</param>
    /// <param name="Says">What is there: the least and the greatest number, or some of the texts.</param>
    /// <param name="Others">Some of the texts that are no numbers.</param>
    public sealed record Column(string Head, Unit? Unit, bool IsNumber, string Says, ImmutableArray<string> Others);

    private sealed class Gathered(string head)
    {
        private readonly List<string> _texts = [];
        private readonly List<string> _others = [];
        private readonly double[] _least = [double.PositiveInfinity, double.PositiveInfinity];
        private readonly double[] _greatest = [double.NegativeInfinity, double.NegativeInfinity];

        public string Head => head;

        public int Filled { get; private set; }

        public int Clocks { get; private set; }

        public int Numbers { get; private set; }

        public int Commas { get; private set; }

        public void Add(string text)
        {
            if (text.Length == 0)
            {
                return;
            }

            Filled++;
            Clocks += RecordingTime.Clock(text) is null ? 0 : 1;
            Numbers += Take(RecordingCells.Number(text, comma: false), 0);
            Commas += Take(RecordingCells.Number(text, comma: true), 1);
            Keep(_texts, text);
            if (RecordingCells.Number(text, comma: false) is null && RecordingCells.Number(text, comma: true) is null)
            {
                Keep(_others, text);
            }
        }

        public Column Of(bool comma)
        {
            int way = comma ? 1 : 0;
            bool number = Filled > 0 && (comma ? Commas : Numbers) * 2 > Filled;
            string says = Filled == 0 ? "empty" : number ? string.Create(CultureInfo.InvariantCulture, $"{_least[way]} .. {_greatest[way]}") : string.Join(" | ", _texts);
            return new(head, RecordingHead.UnitIn(head), number, $"{head}: {says}", [.. _others]);
        }

        private static void Keep(List<string> texts, string text)
        {
            string cut = text.Length > Longest ? text[..Longest] : text;
            if (texts.Count < MostExamples && !texts.Contains(cut))
            {
                texts.Add(cut);
            }
        }

        private int Take(double? number, int way)
        {
            (_least[way], _greatest[way]) = number is { } n ? (Math.Min(_least[way], n), Math.Max(_greatest[way], n)) : (_least[way], _greatest[way]);
            return number is null ? 0 : 1;
        }
    }
}
