using System.Collections.Immutable;
using System.Globalization;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Changes;
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

    /// <summary>More different texts than this are no positions of anything.</summary>
    private const int MostTexts = 24;

    private const string Open = "TO DECIDE";

    /// <summary>The line of the heads, where something stands over them.</summary>
    public int? HeadLine { get; init; }

    /// <summary>Looks at a file.</summary>
    /// <param name="path">Of the file.</param>
    /// <param name="found">Takes what is wrong with it as a file.</param>
    /// <returns>Null where it cannot be read.</returns>
    public static RecordingLook? At(string path, DiagnosticList found)
    {
        ArgumentNullException.ThrowIfNull(path);
        string folder = Path.GetDirectoryName(Path.GetFullPath(path))!, name = Path.GetFileName(path);
        return RecordingSource.In(folder, name, found) is { } source ? At(source, found) : null;
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

    /// <summary>A mapping to be filled in, as a file: every column with what it holds, none with what it means.</summary>
    /// <param name="name">What the recording is to be called.</param>
    public NewFile Mapping(string name) => new(
        $"recordings/{File}",
        [$"A first mapping of {File}: {Count(Rows, "row")}. Say of each column that matters what it sets at the start of a situation,", "or what it is only compared with; delete the others. The file has to lie in the book's folder."],
        [(RecordingMapping.Of(this, name, $"recordings/{File}") with { Time = Time ?? Open }).Addition with { Notes = [.. Columns.Where(c => c.Head != Time && c.Head.Length > 0).SelectMany(Notes)] }]);

    private static IEnumerable<(string, string)> Notes(Column column)
    {
        NewEntry entry = new NewEntry().Text("column", column.Head).Text("sets", Open).Text("compares", Open);
        entry = !column.IsNumber ? entry.Maps("as", [Open], o => (o, NodeText.Text(o))) : column.Unit is null ? entry.Text("unit", Open) : entry;
        return [("", column.Says), ("", $"-{NodeText.AfterColon(entry.Map, flow: true, 0)}")];
    }

    private static string Count(int number, string noun) => string.Create(CultureInfo.InvariantCulture, $"{number} {noun}{(number == 1 ? "" : "s")}");

    /// <summary>One column as it looks.</summary>
    /// <param name="Head">As it stands there.</param>
    /// <param name="Unit">That the head says.</param>
    /// <param name="IsNumber">Whether most of what is there are numbers.</param>
    /// <param name="Says">What is there: the least and the greatest number, or some of the texts.</param>
    /// <param name="Others">Some of the texts that are no numbers.</param>
    public sealed record Column(string Head, Unit? Unit, bool IsNumber, string Says, ImmutableArray<string> Others)
    {
        /// <summary>All that it holds, in the order in which it comes; empty where that is more than words or steps of a handle would be.</summary>
        public ImmutableArray<string> Texts { get; init; } = [];
    }

    private sealed class Gathered(string head)
    {
        private readonly List<string> _texts = [];
        private readonly List<string> _others = [];
        private readonly List<string> _all = [];
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
            if (_all.Count <= MostTexts && !_all.Contains(text))
            {
                _all.Add(text);
            }

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
            return new(head, RecordingHead.UnitIn(head), number, $"{head}: {says}", [.. _others]) { Texts = _all.Count > MostTexts ? [] : [.. _all] };
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
