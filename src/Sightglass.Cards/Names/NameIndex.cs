using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;

namespace Sightglass.Cards.Names;

/// <summary>Things of one sort by their names, found as cards say them.</summary>
public sealed class NameIndex<T>
{
    private readonly NameKey _key;
    private readonly Dictionary<string, List<T>> _byKey = new(StringComparer.Ordinal);
    private readonly string[] _keys;

    /// <summary>In which order the book has them: it does not depend on the language in which they are said.</summary>
    private readonly Dictionary<string, int> _places = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<string>> _byLooseKey = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> _names = new(StringComparer.Ordinal);

    public NameIndex(IEnumerable<KeyValuePair<string, T>> named, NameKey key)
    {
        ArgumentNullException.ThrowIfNull(named);
        ArgumentNullException.ThrowIfNull(key);
        _key = key;
        foreach ((string name, T thing) in named)
        {
            string k = key.Of(name);
            _places.TryAdd(k, _places.Count);
            AddTo(_byKey, k, thing);
            AddTo(_byLooseKey, key.Loose(name), k);
            _names[k] = name;
        }

        _keys = [.. _byKey.Keys.Order(StringComparer.Ordinal)];
    }

    public IEnumerable<string> Names => _names.Values;

    /// <summary>Finds what a phrase names, each referent on its own.</summary>
    /// <param name="phrase">As read.</param>
    /// <param name="help">Whether to look for a name that was nearly meant when nothing is found: slow, for messages.</param>
    public Found<T> Find(NamePhrase phrase, bool help = false)
    {
        ArgumentNullException.ThrowIfNull(phrase);
        ImmutableArray<ImmutableArray<T>>.Builder groups = ImmutableArray.CreateBuilder<ImmutableArray<T>>();
        bool loose = false;
        string? nearest = null;
        foreach (NamePhrase.Referent referent in phrase.Referents)
        {
            ImmutableArray<T> group = Exact(referent);
            if (group.IsEmpty && help && Loosely(referent) is { } key)
            {
                (group, loose, nearest) = ([.. _byKey[key]], true, _names[key]);
            }

            if (group.IsEmpty)
            {
                return new(phrase.Quantifier, [], referent.Keys[0], help ? NearestTo(referent) : null, referent.Word);
            }

            groups.Add(group);
        }

        return new(phrase.Quantifier, groups.ToImmutable(), Nearest: nearest, IsLoose: loose);
    }

    private ImmutableArray<T> Exact(NamePhrase.Referent referent)
    {
        foreach (string key in referent.Keys)
        {
            if (_byKey.TryGetValue(key, out List<T>? things))
            {
                return [.. things];
            }
        }

        foreach (string key in referent.Keys)
        {
            string start = key + ", ";
            ImmutableArray<T> sided = [.. StartingWith(start)];
            if (!sided.IsEmpty)
            {
                return sided;
            }
        }

        return [];
    }

    private IEnumerable<T> StartingWith(string start)
    {
        int at = Array.BinarySearch(_keys, start, StringComparer.Ordinal);
        List<string> keys = [];
        for (int i = at < 0 ? ~at : at; i < _keys.Length && _keys[i].StartsWith(start, StringComparison.Ordinal); i++)
        {
            keys.Add(_keys[i]);
        }

        return keys.OrderBy(k => _places[k]).SelectMany(k => _byKey[k]);
    }

    private string? Loosely(NamePhrase.Referent referent)
    {
        foreach (string key in referent.Keys)
        {
            if (_byLooseKey.TryGetValue(_key.Loose(key), out List<string>? keys) && keys.Count == 1)
            {
                return keys[0];
            }
        }

        return null;
    }

    private string? NearestTo(NamePhrase.Referent referent)
    {
        string? best = null;
        int least = int.MaxValue;
        foreach (string key in referent.Keys)
        {
            if (Basics.Diagnostics.Nearest.Find(key, _keys) is { } near && Basics.Diagnostics.Nearest.Distance(key, near) is int d && d < least)
            {
                (best, least) = (_names[near], d);
            }
        }

        return best;
    }

    private static void AddTo<TValue>(Dictionary<string, List<TValue>> map, string key, TValue value)
    {
        if (!map.TryGetValue(key, out List<TValue>? list))
        {
            map[key] = list = [];
        }

        list.Add(value);
    }
}
