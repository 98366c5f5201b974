using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Assemblies;
using Sightglass.Book.Kinds;
using Sightglass.Book.Messages;
using Sightglass.Book.Model;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Readers;

/// <summary>Reads one item: the keys that all items share, then what its kind asks for.</summary>
internal sealed class ItemReader
{
    private readonly ReadContext _context;
    private readonly MapReader _map;
    private readonly string _name;
    private readonly KindSheet _kind;
    private readonly bool _kindKnown;

    private ItemReader(string name, MapReader map, ReadContext context)
    {
        (_name, _map, _context) = (name, map, context);
        KindSheet? kind = KindOf(map, context);
        (_kind, _kindKnown) = (kind ?? KindSheet.Described, kind is not null);
    }

    /// <summary>Reads an item; null where its body is no map at all.</summary>
    public static Item? Read(YamlEntry entry, ReadContext context)
    {
        MapReader? map = MapReader.Of(entry.Value, entry.Key.Span, $"`{entry.Name}`", context);
        return map is null ? null : new ItemReader(entry.Name, map, context).Build(entry.Key.Span);
    }

    private static KindSheet? KindOf(MapReader map, ReadContext context)
    {
        if (map.Scalar("kind") is not { } s)
        {
            return map.Has("kind") || IsMistyped(map, context) ? null : context.Kinds.Find(KindSheet.Described.Name) ?? KindSheet.Described;
        }

        KindSheet? kind = context.Kinds.Find(s.Value) ?? (s.Value == KindSheet.Described.Name ? KindSheet.Described : null);
        if (kind is null)
        {
            context.Add(BookMessages.UnknownKind(s.Span, s.Value, context.Kinds.Names));
        }

        return kind;
    }

    /// <summary>A key that is nearly <c>kind</c> or <c>assembly</c>, so that the item is not taken for a described one and its other keys blamed.</summary>
    private static bool IsMistyped(MapReader map, ReadContext context)
    {
        YamlEntry? near = map.Unread.FirstOrDefault(e => e.Name.StartsWith("kind", StringComparison.Ordinal) || Nearest.Distance(e.Name, "kind") == 1);
        if (near is null && map.Unread.FirstOrDefault(e => Nearest.Find(e.Name, [Assembly.Key]) is not null) is { } use)
        {
            context.Add(BookMessages.UnknownKey(use.Key.Span, use.Name, map.Owner, [Assembly.Key]));
            context.Found.Damaged(use.Key.Span.Source!, use.Key.Span.Line); // without its parts many names would seem to be missing
            return true;
        }

        if (near is null)
        {
            return context.Found.IsDamaged(map.OwnerSpan.Source);
        }

        context.Add(BookMessages.UnknownKey(near.Key.Span, near.Name, map.Owner, ["kind"]));
        return true;
    }

    private Item Build(Span span)
    {
        (ImmutableArray<string> positions, string? usual) = Positions();
        Item item = new()
        {
            Name = _name,
            Span = span,
            Kind = _kind,
            IsKindUnknown = !_kindKnown,
            System = _map.Name("system", NameUse.System),
            Position = _map.Take("position") is { } p ? PointReader.Read(p, "`position`", _context) : null,
            Places = _map.Names("places", NameUse.Place),
            Label = _map.Text("label", _name),
            Purpose = _map.Text("for"),
            Normal = _map.Text("normal"),
            Cautions = CautionReader.Read(_map.Take("cautions"), _context),
            Texts = new(_map.Text("know"), _map.Text("operate"), _map.Text("repair")),
            Questions = QuestionReader.Read(_map.Take("asks"), _context),
            Photo = Photo(),
            Holds = _map.Names("holds", NameUse.Item),
            IfItFails = _map.Text("if it fails"),
            ConnectsTo = _map.Names("connects to", NameUse.Item),
            Positions = positions,
            UsualPosition = usual,
            Authority = Authority(),
            OperateSeconds = _map.Positive("takes", Dimension.Second, 2),
            Hands = _map.YesNo("hands", absent: false),
            Ports = _kind.Role == KindRole.Store ? PortReader.Read(_map.Take("ports"), _context) : ImmutableSortedDictionary<string, Port>.Empty,
            From = End("from"),
            To = End("to"),
            Parameters = new ParameterReader(_map, _context).Read(_kind.Parameters),
        };
        item = item with { Reading = _kind.Role == KindRole.Indication ? new ReadingReader(_map, item, _context).Read() : null };
        NotePositionsUsed();
        if (_kindKnown)
        {
            _map.Finish();
        }

        return item;
    }

    private (ImmutableArray<string> Positions, string? Usual) Positions()
    {
        ImmutableArray<string> positions = OwnPositions();
        if (_map.Scalar("usual") is not { } usual)
        {
            return (positions, _kind.UsualPosition ?? positions.FirstOrDefault());
        }

        if (!positions.Contains(usual.Value) && _kindKnown)
        {
            _context.AddMissing(BookMessages.NoSuchPosition(usual.Span, usual.Value, _name, positions));
        }

        return (positions, usual.Value);
    }

    private ImmutableArray<string> OwnPositions()
    {
        if (!_kind.TakesPositions)
        {
            if (_kind.Positions.Length > 0 && _map.Take("positions") is not null)
            {
                _context.Add(BookMessages.OwnPositions(_map.KeySpan("positions"), _kind.Name, _kind.Positions));
            }

            return _kind.Positions;
        }

        ImmutableArray<YamlScalar> own = _map.List("positions");

        if (own.Length == 1 || (own.Length == 0 && _kind.Role == KindRole.Control && _map.Required("positions", "[ off, on ]")))
        {
            _context.Add(BookMessages.BadCount(_map.SpanOf("positions"), "a control needs at least two positions", "write `positions: [ off, on ]`"));
        }

        Dictionary<string, YamlScalar> first = new(StringComparer.Ordinal);
        foreach (YamlScalar s in own.Where(s => !first.TryAdd(s.Value, s)))
        {
            _context.Add(BookMessages.DuplicateKey(s.Span, s.Value, first[s.Value].Span));
        }

        return [.. own.Select(s => s.Value).Distinct(StringComparer.Ordinal)];
    }

    private Authority? Authority()
    {
        ImmutableArray<string> who = _map.Names("who", NameUse.Role);
        string? permission = _map.Name("permission", NameUse.Role);
        ImmutableArray<string> told = _map.Names("told", NameUse.Role);
        return who.Length == 0 && permission is null && told.Length == 0 ? null : new(who, permission, told);
    }

    private string? Photo()
    {
        if (_map.Take("photo") is null or YamlScalar { IsNull: true } || _map.Scalar("photo") is not { } s)
        {
            return null;
        }

        if (BookPath.IsInside(s.Value))
        {
            return s.Value;
        }

        _context.Add(BookMessages.LeavesFolder(s.Span, s.Value));
        return null;
    }

    /// <summary>One end of a path, not yet split into item and port.</summary>
    private PortReference? End(string key)
    {
        if (!_kind.HasEnd(key))
        {
            return null;
        }

        bool given = _kind.NeedsEnd(key) ? _map.Required(key, PortReference.Outside) : _map.Has(key);
        return given && _map.Scalar(key) is { } s ? new(s.Value, null, Values.Content(s)) : null;
    }

    /// <summary>Notes the positions by which a parameter is given: of this item, or of items named by its other parameters.</summary>
    private void NotePositionsUsed()
    {
        foreach (KindParameter p in _kind.Parameters.Where(p => p.Type == ParameterType.ByPosition))
        {
            if (_map.Take(p.Name) is YamlMap map)
            {
                foreach (YamlEntry e in map.Entries)
                {
                    _context.Uses(NameUse.Position, e.Name, e.Key.Span);
                }
            }
        }
    }
}
