using System.Collections.Immutable;
using System.Globalization;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Changes;
using Sightglass.Book.Model;

namespace Sightglass.Book.Recordings;

/// <summary>What somebody says a file of recorded states is, as it is typed: an entry of the section <c>recordings</c> to be. Nothing of it is checked before it is read.</summary>
/// <param name="Name">Of the recording.</param>
/// <param name="File">Below the book's folder.</param>
public sealed record RecordingMapping(string Name, string File)
{
    public string Text { get; init; } = "";

    /// <summary>The train in whose names its columns are called; null for the machine alone.</summary>
    public string? Train { get; init; }

    /// <summary>The head of the column that tells when.</summary>
    public string Time { get; init; } = "";

    /// <summary>In what it counts, where it is no clock; empty for seconds.</summary>
    public string TimeUnit { get; init; } = "";

    /// <summary>What stands between two fields; null: what the head line shows.</summary>
    public char? Separator { get; init; }

    public bool HasDecimalComma { get; init; }

    /// <summary>The line of the heads; null: the first that is not blank.</summary>
    public int? HeadLine { get; init; }

    /// <summary>The first line that may be a row; null: the one after the heads.</summary>
    public int? FirstLine { get; init; }

    /// <summary>Texts that stand for no value.</summary>
    public ImmutableArray<string> Missing { get; init; } = [];

    /// <summary>Of the file, in its order; those that mean nothing are not written.</summary>
    public ImmutableArray<ColumnMapping> Columns { get; init; } = [];

    /// <summary>The entry as the book gets it.</summary>
    public BookAddition Addition => new("recordings", Name, new NewEntry()
        .Text("text", Text.Trim()).Text("file", File).Text("train", Train ?? "").Text("time", Time).Text("time unit", TimeUnit)
        .Text("separator", Separator switch { ',' => "comma", ';' => "semicolon", '\t' => "tab", _ => "" }).Text("decimal", HasDecimalComma ? "comma" : "")
        .Text("heads in line", HeadLine?.ToString(CultureInfo.InvariantCulture) ?? "").Text("rows from line", FirstLine?.ToString(CultureInfo.InvariantCulture) ?? "")
        .Texts("missing", Missing).Node("columns", new Yaml.YamlList(default, [.. Columns.Where(c => c.IsUsed).Select(c => c.Entry())])).Map);

    /// <summary>Whether the book would say the same by both.</summary>
    public bool SaysSameAs(RecordingMapping other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return Name == other.Name && NodeText.AfterColon(Addition.Body, flow: false, 2) == NodeText.AfterColon(other.Addition.Body, flow: false, 2);
    }

    /// <summary>A mapping to be filled in, of what a file shows by itself: no column means anything yet.</summary>
    /// <param name="look">At the file.</param>
    /// <param name="name">What the recording is to be called.</param>
    /// <param name="file">Where the file lies, or is to lie, below the book's folder.</param>
    public static RecordingMapping Of(RecordingLook look, string name, string file)
    {
        ArgumentNullException.ThrowIfNull(look);
        return new(name, file)
        {
            Text = "TO DECIDE: what was recorded, where it comes from and who may see it.",
            Time = look.Time ?? "",
            HasDecimalComma = look.HasDecimalComma,
            HeadLine = look.HeadLine,
            Missing = [.. look.Columns.Where(c => c.IsNumber).SelectMany(c => c.Others).Distinct(StringComparer.Ordinal)],
            Columns = [.. look.Columns.Where(c => c.Head != look.Time && c.Head.Length > 0).Select(c => new ColumnMapping(c.Head))],
        };
    }

    /// <summary>What a book says of a file, to be changed; the columns that it passes over stand there too.</summary>
    /// <param name="look">At the file.</param>
    /// <param name="recording">That reads it.</param>
    public static RecordingMapping Of(RecordingLook look, Recording recording)
    {
        ArgumentNullException.ThrowIfNull(look);
        ArgumentNullException.ThrowIfNull(recording);
        Dictionary<string, ColumnMapping> said = recording.Columns.Select(ColumnMapping.Of).DistinctBy(c => c.Head).ToDictionary(c => c.Head, StringComparer.Ordinal);
        return new(recording.Name, recording.File)
        {
            Text = recording.Text,
            Train = recording.Train,
            Time = recording.Time,
            TimeUnit = recording.TimeUnit == UnitTable.Get("s") ? "" : recording.TimeUnit.Symbol,
            Separator = recording.Separator,
            HasDecimalComma = recording.HasDecimalComma,
            HeadLine = recording.HeadLine,
            FirstLine = recording.FirstLine,
            Missing = recording.Missing,
            Columns = [.. look.Columns.Where(c => c.Head != recording.Time && c.Head.Length > 0).Select(c => said.GetValueOrDefault(c.Head, new(c.Head)))],
        };
    }
}
