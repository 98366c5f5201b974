using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Quantities;

namespace Sightglass.Book.Model;

/// <summary>What stood on a machine over time, row by row, in a file of comma-separated values, and what its columns are of this book.</summary>
public sealed record Recording(string Name, Span Span)
{
    public string Text { get; init; } = "";

    /// <summary>Below the book's folder.</summary>
    public string File { get; init; } = "";

    public Span FileSpan { get; init; }

    /// <summary>The train in whose names its columns are called; null for the machine alone.</summary>
    public string? Train { get; init; }

    /// <summary>The head of the column that tells when.</summary>
    public string Time { get; init; } = "";

    public Span TimeSpan { get; init; }

    /// <summary>In what it counts, where it is no clock.</summary>
    public Unit TimeUnit { get; init; } = UnitTable.Get("s");

    /// <summary>What stands between two fields; null: what the head line shows.</summary>
    public char? Separator { get; init; }

    /// <summary>Whether <c>12,5</c> is twelve and a half.</summary>
    public bool HasDecimalComma { get; init; }

    /// <summary>The line of the file in which the heads stand, from 1; null: the first that is not blank.</summary>
    public int? HeadLine { get; init; }

    /// <summary>The line with which the rows begin, from 1; null: the one after the heads.</summary>
    public int? FirstLine { get; init; }

    /// <summary>Texts that stand for no value, beside an empty field.</summary>
    public ImmutableArray<string> Missing { get; init; } = [];

    /// <summary>The columns that mean something; all others are passed over.</summary>
    public ImmutableArray<RecordedColumn> Columns { get; init; } = [];

    /// <summary>What the file holds; null where it was not read: a book that is read from texts has no files beside them.</summary>
    public RecordedTable? Table { get; init; }
}
