using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Kinds;
using Sightglass.Book.Messages;
using Sightglass.Book.Model;
using Sightglass.Book.Readers;

namespace Sightglass.Book.Trains;

/// <summary>Puts the vehicles of a train together into one book.</summary>
/// <param name="book">With the items of the machine's road number.</param>
/// <param name="train">One of its trains, in which every class is known.</param>
/// <param name="found">Takes lines that cannot be joined.</param>
internal sealed class Coupling(ClassBook book, Train train, DiagnosticList found)
{
    /// <summary>m from the middle of the track within which somebody on the ground stands between vehicles and not beside them.</summary>
    private const double Middle = 0.5;

    private readonly ImmutableArray<Stand> _stands = Stands.Of(book, train);
    private readonly ImmutableSortedDictionary<string, Item>.Builder _items = book.Items.ToBuilder();
    private readonly ImmutableSortedDictionary<string, Sign>.Builder _signs = book.Signs.ToBuilder();
    private readonly ImmutableSortedDictionary<string, Hazard>.Builder _hazards = book.Hazards.ToBuilder();
    private readonly ImmutableSortedDictionary<string, Place>.Builder _places = book.Places.ToBuilder();

    public ClassBook Join()
    {
        var facts = book.Facts.ToBuilder();
        List<Leg> legs = [.. book.Legs];
        foreach (Stand stand in _stands)
        {
            VehicleParts parts = new(stand);
            Replace(_items, stand.Class.Items.Values.Select(parts.Of), i => i.Name);
            Replace(_places, stand.Class.Places.Values.Select(parts.Of), p => p.Name);
            Replace(facts, stand.Class.Facts.Values.Select(parts.Of), f => f.Name);
            Replace(_signs, stand.Class.Signs.Values.Select(parts.Of), s => s.Name);
            Replace(_hazards, stand.Class.Hazards.Values.Select(parts.Of), h => h.Name);
            legs.AddRange(stand.Vehicle.IsTheMachine ? [] : stand.Class.Legs.Select(parts.Of));
        }

        for (int i = 0; i + 1 < _stands.Length; i++)
        {
            Couple(_stands[i], _stands[i + 1]);
            legs.AddRange(Through(_stands[i], _stands[i + 1]));
        }

        return book with
        {
            Front = _stands[0].First,
            Length = _stands[^1].Last - _stands[0].First,
            Width = _stands.Max(s => s.Class.Width),
            Items = _items.ToImmutable(),
            Places = _places.ToImmutable(),
            Facts = facts.ToImmutable().SetItems(TrainFacts.Of(_stands)),
            Signs = _signs.ToImmutable(),
            Hazards = _hazards.ToImmutable(),
            Legs = [.. legs],
            Measures = book.Measures.SetItems(train.Measures.Select(m => KeyValuePair.Create(m.Name, m))),
            Roles = book.Roles.ToImmutableSortedDictionary(r => r.Key, r => Reach(r.Value), StringComparer.Ordinal),
            Vehicles = [.. _stands.Select(s => s.Vehicle).OrderBy(v => v.Index)],
            TrainInUse = train.Name,
        };
    }

    private static void Replace<T>(ImmutableSortedDictionary<string, T>.Builder into, IEnumerable<T> parts, Func<T, string> name)
    {
        foreach (T part in parts)
        {
            into[name(part)] = part;
        }
    }

    /// <summary>Whoever goes to some places of the machine goes to all places of cars, and to the same of another machine.</summary>
    private Role Reach(Role role)
    {
        if (!role.IsBound || role.Reaches.IsEmpty)
        {
            return role;
        }

        IEnumerable<string> more = _stands.Where(s => !s.Vehicle.IsTheMachine)
            .SelectMany(s => (s.Listed.IsMachine ? role.Reaches : s.Class.Places.Keys).Select(s.Vehicle.NameOf));
        return role with { Reaches = [.. role.Reaches, .. more] };
    }

    /// <summary>The way for people from one vehicle into the next, where both facing ends have one.</summary>
    private static IEnumerable<Leg> Through(Stand ahead, Stand behind) =>
        ahead.EndFacing(Side.Rear)?.Gangway is { } from && behind.EndFacing(Side.Front) is { Gangway: { } to, Span: var span }
            ? [new(ahead.Vehicle.NameOf(from.Place), behind.Vehicle.NameOf(to.Place), span, from.Seconds + to.Seconds, "gangway") { Through = [.. from.Through.Select(ahead.Vehicle.NameOf), .. to.Through.Select(behind.Vehicle.NameOf)] }]
            : [];

    private void Couple(Stand ahead, Stand behind)
    {
        if (ahead.EndFacing(Side.Rear) is not { } rear || behind.EndFacing(Side.Front) is not { } front)
        {
            return;
        }

        string where = Where(ahead, rear, behind, front);
        Dictionary<string, Item> couplings = new(StringComparer.Ordinal);
        foreach (string line in rear.Joins.Keys.Where(front.Joins.ContainsKey))
        {
            if (Joined(line, ahead, rear, behind, front, where) is { } coupling)
            {
                couplings[line] = _items[coupling.Name] = coupling;
                Endanger(coupling);
            }
        }

        foreach ((Item pair, Sign seen) in Crossings.Of(rear, front, couplings, book.Kinds, where))
        {
            _items[pair.Name] = pair;
            _signs[seen.Name] = seen;
        }
    }

    /// <summary>Who handles what joins two ends handles both: what is dangerous at one of them is dangerous there. Who stands between two vehicles stands at both, whichever of them the place is called after.</summary>
    private void Endanger(Item coupling)
    {
        string[] between = [.. coupling.Places.Where(p => _places.TryGetValue(p, out Place? place) && place.OnGround && Math.Abs(place.Position.Y) < Middle)];
        foreach (Hazard hazard in _hazards.Values.Where(h => between.Any(h.Places.Contains) && !between.All(h.Places.Contains)).ToList())
        {
            _hazards[hazard.Name] = hazard with { Places = [.. hazard.Places.Union(between)] };
        }

        foreach (Hazard hazard in _hazards.Values.Where(h => coupling.Kind.SharesDangers && new[] { coupling.From!.Item, coupling.To!.Item }.Any(i => h.Items.Contains(i) || h.Ends.Contains(i))).ToList())
        {
            _hazards[hazard.Name] = hazard with { Items = [.. hazard.Items, coupling.Name] };
        }
    }

    private Item? Joined(string line, Stand ahead, CouplingEnd rear, Stand behind, CouplingEnd front, string where)
    {
        (string Item, Span Span) first = rear.Joins[line], second = front.Joins[line];
        Item? from = _items.GetValueOrDefault(ahead.Vehicle.NameOf(first.Item)), to = _items.GetValueOrDefault(behind.Vehicle.NameOf(second.Item));
        if (from is null || to is null || (from.Kind.CoupledBy is null && to.Kind.CoupledBy is null))
        {
            return null;
        }

        if (from.Kind.CoupledBy != to.Kind.CoupledBy || book.Kinds?.Find(from.Kind.CoupledBy!) is not { } kind)
        {
            found.Add(BookMessages.CannotCouple(train.Span, line, from.Name, from.Kind.Name, to.Name, to.Kind.Name));
            return null;
        }

        string name = $"{line} {kind.CoupledAs} {where}";
        Point3? position = from.Position is { } p ? p with { X = ahead.Last } : null;
        return new()
        {
            Name = name,
            Span = ahead.Vehicle.Index < behind.Vehicle.Index ? first.Span : second.Span,
            Vehicle = new(Math.Min(ahead.Vehicle.Index, behind.Vehicle.Index), ""),
            Kind = kind,
            System = from.System,
            Position = position,
            Places = [.. from.Places.Union(to.Places)],
            Label = $"{line} {kind.CoupledAs}",
            Purpose = kind.Purpose,
            Normal = from.Normal.Length > 0 ? from.Normal : to.Normal,
            Cautions = from.Cautions.IsEmpty ? to.Cautions : from.Cautions,
            From = new(from.Name, null, first.Span),
            To = new(to.Name, null, second.Span),
            Positions = kind.Positions,
            UsualPosition = kind.UsualPosition,
            Authority = from.Authority ?? to.Authority,
            OperateSeconds = Math.Max(from.OperateSeconds, to.OperateSeconds),
            Parameters = ParameterTexts.Defaults(kind),
        };
    }

    /// <summary>After the end of the machine where it is one of the two; else after both vehicles in the order of the train.</summary>
    private static string Where(Stand ahead, CouplingEnd rear, Stand behind, CouplingEnd front)
    {
        if (ahead.Vehicle.IsTheMachine || behind.Vehicle.IsTheMachine)
        {
            return $"at the {(ahead.Vehicle.IsTheMachine ? rear.Name : front.Name)}";
        }

        (Stand one, Stand two) = ahead.Vehicle.Index < behind.Vehicle.Index ? (ahead, behind) : (behind, ahead);
        return $"between {one.Vehicle.Name} and {two.Vehicle.Name}";
    }
}
