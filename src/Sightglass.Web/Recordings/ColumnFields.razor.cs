using System.Collections.Immutable;
using System.Globalization;
using Microsoft.AspNetCore.Components;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Recordings;

namespace Sightglass.Web.Recordings;

/// <summary>One column of a file under work: what it holds, what somebody says it is, and what is wrong with that.</summary>
public sealed partial class ColumnFields
{
    /// <summary>Its place in the file.</summary>
    [Parameter, EditorRequired]
    public int Index { get; set; }

    /// <summary>What it holds.</summary>
    [Parameter, EditorRequired]
    public RecordingLook.Column Look { get; set; } = null!;

    /// <summary>What is said of it.</summary>
    [Parameter, EditorRequired]
    public ColumnMapping Column { get; set; } = null!;

    /// <summary>What the book has for it; null for nothing yet, and for a formula.</summary>
    [Parameter]
    public MappingOffer? Offer { get; set; }

    /// <summary>Texts that stand for no value.</summary>
    [Parameter]
    public ImmutableArray<string> Missing { get; set; } = [];

    /// <summary>What is wrong with it.</summary>
    [Parameter]
    public IReadOnlyList<MappingFinding> Wrong { get; set; } = [];

    /// <summary>Is told what is said of it now.</summary>
    [Parameter, EditorRequired]
    public EventCallback<ColumnMapping> Changed { get; set; }

    private bool HasWords => Offer is { Words.IsEmpty: false };

    /// <summary>Units of what it is, that in use among them; all of the table for a formula.</summary>
    private IEnumerable<string> Units => (Offer?.Units ?? UnitTable.Symbols).Concat(Column.Unit.Length > 0 ? [Column.Unit] : []).Distinct(StringComparer.Ordinal);

    /// <summary>What it holds, without the head that stands over it.</summary>
    private string Holds => Look.Says.StartsWith(Look.Head + ": ", StringComparison.Ordinal) ? Look.Says[(Look.Head.Length + 2)..] : Look.Says;

    /// <summary>How a distance is written.</summary>
    private string Near => $"4 {(UnitTable.Find(Column.Unit) ?? Look.Unit) switch { { } unit => ColumnMapping.Difference(unit).Symbol, _ => "K" }}";

    private Task Put(ColumnMapping column) => Changed.InvokeAsync(column);

    private string Id(string key) => string.Create(CultureInfo.InvariantCulture, $"c{Index}-{key}");

    private string? IsWrong(string key) => Wrong.Any(w => w.Key == key) ? "true" : null;

    private string MeaningOf(string text) => Column.As.FirstOrDefault(a => a.Text == text).Means ?? "";

    /// <summary>What is said of texts that do not occur in this file stays.</summary>
    private ColumnMapping With(string text, string means) => Column with { As = [.. Look.Texts.Select(t => (t, t == text ? means : MeaningOf(t))).Where(a => a.Item2.Length > 0), .. Column.As.Where(a => !Look.Texts.Contains(a.Text))] };

    private static string One(ChangeEventArgs change) => change.Value?.ToString()?.Trim() ?? "";

    private static ImmutableArray<string> Several(ChangeEventArgs change) => [.. One(change).Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)];
}
