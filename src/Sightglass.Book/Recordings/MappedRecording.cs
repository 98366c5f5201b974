using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Changes;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Book.Readers;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Recordings;

/// <summary>A mapping as the book would read it, with its file, before either is in the book.</summary>
/// <param name="Recording">As it is read; null where something is wrong with it, and where no column means anything yet.</param>
/// <param name="Found">What is wrong, each at its place.</param>
public sealed record MappedRecording(Recording? Recording, ImmutableArray<MappingFinding> Found)
{
    /// <summary>Reads a mapping and its file.</summary>
    /// <param name="mapping">As it is typed.</param>
    /// <param name="csv">The file.</param>
    /// <param name="book">In whose names the columns are called.</param>
    /// <param name="kinds">Of the book.</param>
    /// <param name="bind">Says what fits no machine, such as what is compared; called with a recording that was read.</param>
    public static MappedRecording Read(RecordingMapping mapping, SourceText csv, ClassBook book, KindCatalog kinds, Action<Recording, DiagnosticList>? bind = null)
    {
        ArgumentNullException.ThrowIfNull(mapping);
        ArgumentNullException.ThrowIfNull(csv);
        ArgumentNullException.ThrowIfNull(book);
        if (!mapping.Columns.Any(c => c.IsUsed))
        {
            return new(null, []);
        }

        DiagnosticList found = [];
        Findings findings = new(found, YamlLimits.Default);
        SourceText text = new NewFile("mapping.yaml", [], [mapping.Addition]).Source;
        YamlEntry? entry = new YamlFile(new YamlBudget(YamlLimits.Default), findings).Read(text).OfType<YamlMap>().FirstOrDefault()?.Entries.Select(e => (e.Value as YamlMap)?.Entries.FirstOrDefault()).FirstOrDefault();
        Recording? read = null;
        if (entry is not null)
        {
            ClassBook names = mapping.Train is { } train && book.Trains.ContainsKey(train) ? book.Coupled(train) : book;
            HashSet<string> declared = [.. book.Bodies?.Names ?? names.Items.Keys];
            read = new RecordingReader(new(findings, kinds), new(names.Items, declared), names.Vehicles, (_, _) => csv).Read(entry);
        }

        if (read is not null && !found.HasErrors)
        {
            bind?.Invoke(read, found);
        }

        return new(found.HasErrors ? null : read, [.. found.Where(d => d.Severity == Severity.Error).Select(d => Placed(d, entry, csv, mapping))]);
    }

    private static MappingFinding Placed(Diagnostic finding, YamlEntry? entry, SourceText csv, RecordingMapping mapping)
    {
        if (ReferenceEquals(finding.Span.Source, csv))
        {
            return new(HeadAt(csv, finding.Span.Start, mapping), "", finding);
        }

        YamlEntry? key = At(entry?.Value, finding.Span.Start);
        if (key?.Value is not YamlList columns || key.Name != "columns")
        {
            return new(null, key?.Name ?? "", finding);
        }

        YamlNode? column = columns.Items.LastOrDefault(i => Start(i) <= finding.Span.Start);
        string? head = ((column as YamlMap)?.Find("column")?.Value as YamlScalar)?.Value;
        return new(head, At(column, finding.Span.Start)?.Name ?? "", finding);
    }

    /// <summary>The key of a map that a place belongs to.</summary>
    private static YamlEntry? At(YamlNode? map, int place) => (map as YamlMap)?.Entries.LastOrDefault(e => e.Key.Span.Start <= place);

    private static int Start(YamlNode node) => node is YamlMap { Entries: [var first, ..] } ? first.Key.Span.Start : node.Span.Start;

    /// <summary>The head over a field of the file; null for the heads themselves and for what is no field of a column that is mapped.</summary>
    private static string? HeadAt(SourceText csv, int place, RecordingMapping mapping)
    {
        char separator = mapping.Separator ?? RecordingHead.SeparatorOf(csv, mapping.HeadLine);
        CsvScanner scanner = new(csv.Text, separator);
        string[]? heads = null;
        while (scanner.Next())
        {
            if (heads is null)
            {
                heads = scanner.IsBlank || (mapping.HeadLine is { } line && csv.Locate(scanner.Fields[0].Start).Line < line) ? null : [.. scanner.Fields.Select(scanner.Text)];
                continue;
            }

            if (scanner.Fields[^1].End >= place)
            {
                int at = scanner.Fields.Index().LastOrDefault(f => f.Item.Start <= place).Index;
                return at < heads.Length && mapping.Columns.Any(c => c.Head == heads[at]) ? heads[at] : null;
            }
        }

        return null;
    }
}
