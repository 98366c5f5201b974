using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Messages;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace Sightglass.Book.Yaml;

/// <summary>Builds trees with places from the parser's stream of events, one per document; no recursion.</summary>
internal sealed class YamlTreeBuilder(MendedText text, YamlBudget budget, List<Diagnostic> found)
{
    private readonly Stack<Frame> _frames = new();
    private readonly ImmutableArray<YamlNode>.Builder _roots = ImmutableArray.CreateBuilder<YamlNode>();

    /// <summary>Start of the latest event; the map of a single pair in a flow list says 0 of itself.</summary>
    private long _start;

    /// <summary>The trees read so far.</summary>
    public ImmutableArray<YamlNode> Roots => _roots.ToImmutable();

    /// <summary>End of the last thing understood, in the mended text.</summary>
    public long LastEnd { get; private set; }

    /// <summary>A list or map still open; in a map, keys and values alternate.</summary>
    private sealed record Frame(bool IsMap, long Start)
    {
        public ImmutableArray<YamlNode>.Builder Items { get; } = ImmutableArray.CreateBuilder<YamlNode>();
    }

    /// <summary>Reads all documents.</summary>
    /// <returns>False when a limit stopped it; the finding says which.</returns>
    /// <exception cref="YamlException">The text is not YAML; other exceptions of the parser pass through as well.</exception>
    public bool Build()
    {
        using StringReader reader = new(text.Build());
        Parser parser = new(reader);
        while (parser.MoveNext())
        {
            ParsingEvent e = parser.Current!;
            LastEnd = Math.Max(LastEnd, e.End.Index);
            _start = Math.Max(_start, e.Start.Index);
            if (!Take(e))
            {
                return false;
            }
        }

        return true;
    }

    private bool Take(ParsingEvent e)
    {
        switch (e)
        {
            case MappingStart or SequenceStart:
                Unwanted((NodeEvent)e);
                _frames.Push(new(e is MappingStart, _start));
                if (_frames.Count > budget.Limits.Depth)
                {
                    found.Add(BookMessages.TooDeep(At(e), budget.Limits.Depth));
                    return false;
                }

                break;
            case MappingEnd or SequenceEnd:
                Frame frame = _frames.Pop();
                return Add(Close(frame));
            case Scalar s:
                Unwanted(s);
                return Add(new YamlScalar(At(e), s.Value, s.Style == ScalarStyle.Plain));
            case AnchorAlias:
                found.Add(BookMessages.Alias(At(e)));
                return Add(new YamlScalar(At(e), "", IsPlain: true));
        }

        return true;
    }

    private void Unwanted(NodeEvent e)
    {
        if (!e.Anchor.IsEmpty)
        {
            found.Add(BookMessages.Alias(At(e)));
        }

        if (!e.Tag.IsEmpty)
        {
            found.Add(BookMessages.Tag(At(e), e.Tag.ToString()));
        }
    }

    private bool Add(YamlNode node)
    {
        if (_frames.TryPeek(out Frame? frame))
        {
            frame.Items.Add(node);
        }
        else
        {
            _roots.Add(node);
        }

        if (budget.TakeNode())
        {
            return true;
        }

        found.Add(BookMessages.TooManyNodes(node.Span, budget.Limits.Nodes));
        return false;
    }

    private YamlNode Close(Frame frame)
    {
        long end = frame.Items.Count == 0 ? frame.Start + 1 : frame.Start;
        int last = frame.Items.Count == 0 ? text.ToOriginal(end) : frame.Items[^1].Span.End;
        Span span = text.Source.Between(text.ToOriginal(frame.Start), last);
        return frame.IsMap ? new YamlMap(span, Entries(frame)) : new YamlList(span, frame.Items.ToImmutable());
    }

    private ImmutableArray<YamlEntry> Entries(Frame frame)
    {
        Dictionary<string, YamlEntry> seen = new(StringComparer.Ordinal);
        ImmutableArray<YamlEntry>.Builder entries = ImmutableArray.CreateBuilder<YamlEntry>(frame.Items.Count / 2);
        for (int i = 0; i + 1 < frame.Items.Count; i += 2)
        {
            if (frame.Items[i] is not YamlScalar key)
            {
                found.Add(BookMessages.KeyNotText(frame.Items[i].Span));
                continue;
            }

            YamlEntry entry = new(key, frame.Items[i + 1]);
            if (seen.TryGetValue(key.Value, out YamlEntry? first))
            {
                found.Add(BookMessages.DuplicateKey(key.Span, key.Value, first.Key.Span));
                continue;
            }

            seen.Add(key.Value, entry);
            entries.Add(entry);
        }

        return entries.ToImmutable();
    }

    private Span At(ParsingEvent e) => text.Span(e.Start.Index, e.End.Index);
}
