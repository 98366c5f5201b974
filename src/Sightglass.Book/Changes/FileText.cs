using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Changes;

/// <summary>An author's file as text and as tree: finds what stands at a place, and makes the smallest edits of it. Comments, order and quotes stay.</summary>
internal sealed class FileText
{
    /// <summary>Keys of an item in the usual order: a new one goes behind the last of those that come before it.</summary>
    private static readonly string[] s_order =
        ["kind", "system", "position", "places", "label", "for", "normal", "cautions", "know", "operate", "repair", "asks", "photo", "holds", "if it fails", "connects to"];

    private readonly string _text;

    public FileText(SourceText source)
    {
        (Source, _text) = (source, source.Text);
        Documents = Parse(source);
    }

    public SourceText Source { get; }

    public IReadOnlyList<YamlNode> Documents { get; }

    /// <summary>The trees of a text that was read without errors before.</summary>
    public static IReadOnlyList<YamlNode> Parse(SourceText source) =>
        new YamlFile(new YamlBudget(YamlLimits.Default), new Findings([], YamlLimits.Default)).Read(source);

    /// <summary>The entry whose key stands at an offset, or null.</summary>
    public YamlEntry? EntryAt(int start) => Documents.Select(d => EntryAt(d, start)).FirstOrDefault(e => e is not null);

    /// <summary>The map that begins at an offset.</summary>
    public YamlMap? MapAt(int start) => Documents.Select(d => MapAt(d, start)).FirstOrDefault(m => m is not null);

    /// <summary>One value in the place of another.</summary>
    public TextEdit Replace(YamlEntry entry, YamlNode becomes)
    {
        bool flow = IsInFlow(entry.Key.Span.Start);
        int indent = Column(entry.Key.Span.Start) + 2;
        if (entry.Value is YamlScalar { IsNull: false } old && becomes is YamlScalar text)
        {
            int end = Trimmed(old.Span.Start, old.Span.End);
            ScalarStyle style = ScalarText.StyleOf(_text[old.Span.Start..end]);
            return new(old.Span.Start, end, ScalarText.Write(text.Value, style, flow, indent), old, becomes);
        }

        // Nothing, or an empty pair of braces: what comes stands behind the colon.
        int colon = _text.IndexOf(':', entry.Key.Span.End) + 1;
        int last = Math.Max(colon, entry.Value is YamlScalar { Value: "" } ? colon : EndOf(entry.Value));
        return new(colon, last, NodeText.AfterColon(becomes, flow, indent), entry.Value, becomes);
    }

    /// <summary>A new key of a map that has some.</summary>
    public TextEdit Insert(YamlMap map, string key, YamlNode value)
    {
        bool flow = IsFlow(map);
        int at = Behind(map, key);
        YamlMap becomes = map with { Entries = map.Entries.Insert(at, new(NodeText.Text(key), value)) };
        YamlEntry before = map.Entries[at - 1];
        int end = EndOf(before);
        if (flow)
        {
            return new(end, end, $", {NodeText.Key(key, flow: true)}:{NodeText.AfterColon(value, flow: true, 0)}", map, becomes);
        }

        int column = Column(map.Entries[0].Key.Span.Start);
        int line = EndOfLine(end);
        return new(line, line, $"\n{new string(' ', column)}{NodeText.Key(key, flow: false)}:{NodeText.AfterColon(value, flow: false, column + 2)}", map, becomes);
    }

    /// <summary>One more element of a list that has some.</summary>
    public TextEdit Append(YamlList list, YamlNode item)
    {
        YamlList becomes = list with { Items = list.Items.Add(item) };
        int end = EndOf(list.Items[^1]);
        if (IsFlow(list))
        {
            return new(end, end, "," + NodeText.AfterColon(item, flow: true, 0), list, becomes);
        }

        int hyphen = _text.LastIndexOf('-', list.Items[0].Span.Start);
        int column = Column(hyphen);
        int line = EndOfLine(end);
        return new(line, line, $"\n{new string(' ', column)}- {NodeText.Item(item, column + 2)}", list, becomes);
    }

    /// <summary>A map without one of its keys; one that has no other cannot be left.</summary>
    public TextEdit? Remove(YamlMap map, YamlEntry entry)
    {
        int at = map.Entries.IndexOf(entry);
        if (map.Entries.Length < 2)
        {
            return null;
        }

        YamlMap becomes = map with { Entries = map.Entries.RemoveAt(at) };
        if (!IsFlow(map))
        {
            return at == 0 && !IsFirstOfLine(entry.Key.Span.Start)
                ? new(entry.Key.Span.Start, map.Entries[1].Key.Span.Start, "", map, becomes) // behind the hyphen of a list
                : new(entry.Key.Span.Start - Column(entry.Key.Span.Start), NextLine(EndOf(entry)), "", map, becomes);
        }

        return at == 0
            ? new(entry.Key.Span.Start, map.Entries[1].Key.Span.Start, "", map, becomes)
            : new(EndOf(map.Entries[at - 1]), EndOf(entry), "", map, becomes);
    }

    /// <summary>A list without one of its elements; null where it has no other, or where they do not stand below each other.</summary>
    public TextEdit? Remove(YamlList list, YamlNode item)
    {
        int at = list.Items.IndexOf(item);
        if (list.Items.Length < 2 || at < 0)
        {
            return null;
        }

        YamlList becomes = list with { Items = list.Items.RemoveAt(at) };
        if (IsFlow(list))
        {
            return at == 0
                ? new(item.Span.Start, list.Items[1].Span.Start, "", list, becomes)
                : new(EndOf(list.Items[at - 1]), EndOf(item), "", list, becomes);
        }

        int hyphen = _text.LastIndexOf('-', item.Span.Start);
        return IsFirstOfLine(hyphen) ? new(hyphen - Column(hyphen), NextLine(EndOf(item)), "", list, becomes) : null;
    }

    /// <summary>Whether what an edit takes out holds a comment.</summary>
    public bool HoldsComment(TextEdit edit)
    {
        if (edit is { Old: YamlScalar, New: YamlScalar })
        {
            return false; // a value alone
        }

        char quote = '\0';
        for (int i = edit.Start; i < edit.End; i++)
        {
            char c = _text[i];
            if (quote != '\0')
            {
                i += quote == '"' && c == '\\' ? 1 : 0;
                quote = c == quote ? '\0' : quote;
            }
            else if (c is '"' or '\'' && (i == 0 || char.IsWhiteSpace(_text[i - 1]) || _text[i - 1] is '{' or '[' or ',' or ':'))
            {
                quote = c;
            }
            else if (c == '#' && (i == 0 || char.IsWhiteSpace(_text[i - 1])))
            {
                return true;
            }
        }

        return false;
    }

    private static YamlEntry? EntryAt(YamlNode node, int start) => node switch
    {
        YamlMap map => map.Entries.FirstOrDefault(e => e.Key.Span.Start == start) ?? map.Entries.Select(e => EntryAt(e.Value, start)).FirstOrDefault(e => e is not null),
        YamlList list => list.Items.Select(i => EntryAt(i, start)).FirstOrDefault(e => e is not null),
        _ => null,
    };

    private static YamlMap? MapAt(YamlNode node, int start) => node switch
    {
        YamlMap map when map.Span.Start == start => map,
        YamlMap map => map.Entries.Select(e => MapAt(e.Value, start)).FirstOrDefault(m => m is not null),
        YamlList list => list.Items.Select(i => MapAt(i, start)).FirstOrDefault(m => m is not null),
        _ => null,
    };

    private static int Behind(YamlMap map, string key)
    {
        int rank = Array.IndexOf(s_order, key);
        int last = rank < 0 ? -1 : map.Entries.Select((e, i) => Array.IndexOf(s_order, e.Name) is >= 0 and var r && r < rank ? i : -1).Max();
        return last < 0 ? map.Entries.Length : last + 1;
    }

    private bool IsFlow(YamlNode collection) => _text[collection.Span.Start] is '{' or '[';

    /// <summary>Whether a key stands between braces: then all of its kind of map does.</summary>
    private bool IsInFlow(int keyStart) => Documents.Select(d => Parent(d, keyStart)).FirstOrDefault(p => p is not null) is { } parent && IsFlow(parent);

    private static YamlMap? Parent(YamlNode node, int start) => node switch
    {
        YamlMap map => map.Entries.Any(e => e.Key.Span.Start == start) ? map : map.Entries.Select(e => Parent(e.Value, start)).FirstOrDefault(p => p is not null),
        YamlList list => list.Items.Select(i => Parent(i, start)).FirstOrDefault(p => p is not null),
        _ => null,
    };

    private int Column(int at) => at - (_text.LastIndexOf('\n', Math.Max(0, at - 1)) + 1);

    private bool IsFirstOfLine(int at) => _text.AsSpan(at - Column(at), Column(at)).Trim().IsEmpty;

    /// <summary>Before the line's end, which may be <c>\r\n</c>.</summary>
    private int EndOfLine(int at)
    {
        int end = _text.IndexOf('\n', Math.Max(0, at));
        end = end < 0 ? _text.Length : end;
        return end > 0 && end <= _text.Length && end > at && _text[end - 1] == '\r' ? end - 1 : end;
    }

    private int NextLine(int at) => _text.IndexOf('\n', at) is >= 0 and var end ? end + 1 : _text.Length;

    private int Trimmed(int start, int end)
    {
        while (end > start && char.IsWhiteSpace(_text[end - 1]))
        {
            end--;
        }

        return end;
    }

    private int EndOf(YamlEntry entry) => entry.Value is YamlScalar { Value: "", IsPlain: true } ? _text.IndexOf(':', entry.Key.Span.End) + 1 : EndOf(entry.Value);

    /// <summary>Behind the last letter of a node; a collection between brackets ends with its own.</summary>
    private int EndOf(YamlNode node)
    {
        if (node is YamlScalar)
        {
            return Trimmed(node.Span.Start, node.Span.End);
        }

        int end = node switch
        {
            YamlMap { Entries: [.., var last] } => EndOf(last),
            YamlList { Items: [.., var last] } => EndOf(last),
            _ => node.Span.Start + 1,
        };
        if (!IsFlow(node))
        {
            return end;
        }

        char closing = _text[node.Span.Start] == '{' ? '}' : ']';
        while (_text[end] != closing)
        {
            end = _text[end] == '#' ? EndOfLine(end) : end + 1;
        }

        return end + 1;
    }
}
