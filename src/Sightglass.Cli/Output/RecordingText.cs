using System.Globalization;
using System.Text;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Model;
using Sightglass.Book.Recordings;
using Sightglass.Trials.Recordings;

namespace Sightglass.Cli.Output;

/// <summary>Recordings as text, and as a table.</summary>
internal static class RecordingText
{
    private const int Widest = 26;

    public static void PrintAll(TextWriter output, ClassBook book, bool json)
    {
        Recording[] recordings = [.. book.Recordings.Values.OrderBy(r => r.Span)];
        if (json)
        {
            Answer.Write(output, new RecordingListAnswer(book.Title, book.Notice, [.. recordings.Select(r => new RecordingListAnswer.Row(r.Name, r.Text, r.File, r.Table!.Rows, r.Table.Labels[0], r.Table.Labels[^1], Of(book, r)))]));
            return;
        }

        BookList.Print(output, book, recordings, "recording", "`recording FILE.csv` looks at a file and writes a first mapping.", r =>
        [
            r.Name,
            r.Text,
            $"{r.File}: {r.Table!.Rows} rows from {r.Table.Labels[0]} to {r.Table.Labels[^1]}.",
            Of(book, r) is { Length: > 0 } drawn ? $"Drawn from by {string.Join("; ", drawn)}." : "No situation draws from it yet.",
        ]);
    }

    public static void Print(TextWriter output, RecordingReport report)
    {
        WalkText.Wrap(output, "", report.Bound.Plan.Book.Notice);
        output.WriteLine();
        WalkText.Wrap(output, "", $"{report.Recording.Name}: {report.Recording.Text}");
        WalkText.Wrap(output, "", $"{report.Recording.File}: {report.Table.Rows} rows. {report.States.Rows.Length} of them, from {report.Table.Labels[report.States.Rows[0]]} to {report.Table.Labels[report.States.Rows[^1]]}, are states to draw from{(report.Situation is { } s ? $" in the situation `{s}`" : "; no situation draws from them yet")}.");
        output.WriteLine();
        foreach (RecordedColumn column in report.Recording.Columns.Where(c => c.Sets.Length > 0))
        {
            WalkText.Wrap(output, "   ", $"{column.Head} sets {string.Join(", ", column.Sets)}");
        }

        if (report.Bound.Comparisons.IsEmpty)
        {
            output.WriteLine();
            WalkText.Wrap(output, "", "No column is compared with anything: nothing tells whether the states explain the record. Give columns `compares: INDICATION`.");
            return;
        }

        output.WriteLine();
        WalkText.Wrap(output, "", string.Create(CultureInfo.InvariantCulture, $"What was recorded, and what the machine has {report.After.Seconds:0.###} s after it began with that row:"));
        foreach ((BoundComparison comparison, int i) in report.Bound.Comparisons.Select((c, i) => (c, i)))
        {
            output.WriteLine();
            One(output, report, comparison, i);
        }

        foreach (ComparedRow row in report.Compared.Where(r => r.Trouble is not null))
        {
            WalkText.Wrap(output, "", $"{report.Table.Labels[row.Row]}: {row.Trouble}");
        }

        output.WriteLine();
        WalkText.Wrap(output, "", report.Agrees ? "The states explain the record as nearly as the book asks." : "The states do not explain the record everywhere: something that the recorder does not tell stood otherwise, a column is mapped wrongly, or the model is wrong there.");
    }

    /// <summary>Rows as comma-separated values: the time as it is written, then for each comparison what was recorded and what the machine has.</summary>
    public static string Csv(RecordingReport report)
    {
        StringBuilder text = new();
        text.AppendJoin(',', report.Bound.Comparisons.SelectMany(c => new[] { $"{c.Column.Head}, recorded", $"{c.Name}{(c.Column.Unit is { } u ? $" [{QuantityFormat.Symbol(u)}]" : "")}" }).Prepend("row").Select(CsvText.Cell)).Append('\n');
        foreach (ComparedRow row in report.Compared)
        {
            text.AppendJoin(',', report.Bound.Comparisons.SelectMany((c, i) => new[] { Number(c, row.Recorded[i]), Number(c, row.Machine[i]) }).Prepend(report.Table.Labels[row.Row]).Select(CsvText.Cell)).Append('\n');
        }

        return text.ToString();
    }

    private static void One(TextWriter output, RecordingReport report, BoundComparison comparison, int index)
    {
        output.WriteLine($"  {Short(comparison.Column.Head),-Widest}  {Short(comparison.Name)}{(comparison.Column.Within is { } within ? $", within {QuantityFormat.Text(within, ColumnMapping.Difference(comparison.Column.Unit!))}" : "")}");
        foreach (ComparedRow row in report.Compared)
        {
            (double recorded, double machine) = (row.Recorded[index], row.Machine[index]);
            string apart = double.IsNaN(recorded) || !comparison.Words.IsEmpty ? "" : string.Create(CultureInfo.InvariantCulture, $"{(machine - recorded) / comparison.Column.Unit!.Factor:+0.0;-0.0;0.0}");
            output.WriteLine($"  {Short(report.Table.Labels[row.Row]),-Widest}  {comparison.Say(recorded),12}  {comparison.Say(machine),12}  {apart,8}{(comparison.Agrees(recorded, machine) ? "" : "  further than that")}");
        }
    }

    private static string Number(BoundComparison comparison, double value) =>
        double.IsNaN(value) ? "" : comparison.Words.IsEmpty ? comparison.Column.Unit!.FromSi(value).ToString("0.######", CultureInfo.InvariantCulture) : comparison.Words[(int)value];

    private static string Short(string text) => text.Length <= Widest ? text : $"{text[..(Widest - 1)]}…";

    private static string[] Of(ClassBook book, Recording recording) => [.. book.Situations.Values.Where(s => s.States?.Recording == recording.Name).OrderBy(s => s.Span).Select(s => s.Name)];
}
