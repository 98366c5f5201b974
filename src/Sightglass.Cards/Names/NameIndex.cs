using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;

namespace Sightglass.Cards.Names;

/// <summary>Things of one sort by their names, found as cards say them.</summary>
public sealed class NameIndex<T>
{
    private readonly NameKey _key;
    private readonly SortedDictionary<string, List<T>> _byKey = new(StringComparer.Ordinal);
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
            AddTo(_byKey, k, thing);
            AddTo(_byLooseKey, key.Loose(name), k);
            _names[k] = name;
        }
    }

    public IEnumerable<string> Names => _names.Values;

    /// <summary>Finds what a phrase names, each referent on its own.</summary>
    public Found<T> Find(NamePhrase phrase)
    {
        ArgumentNullException.ThrowIfNull(phrase);
        ImmutableArray<ImmutableArray<T>>.Builder groups = ImmutableArray.CreateBuilder<ImmutableArray<T>>();
        bool loose = false;
        string? nearest = null;
        foreach (NamePhrase.Referent referent in phrase.Referents)
        {
            ImmutableArray<T> group = Exact(referent);
            if (group.IsEmpty && Loosely(referent) is { } key)
            {
                (group, loose, nearest) = ([.. _byKey[key]], true, _names[key]);
            }

            if (group.IsEmpty)
            {
                return new(phrase.Quantifier, [], referent.Keys[0], NearestTo(referent), referent.Word);
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
            ImmutableArray<T> sided = [.. _byKey.Where(p => p.Key.StartsWith(start, StringComparison.Ordinal)).SelectMany(p => p.Value)];
            if (!sided.IsEmpty)
            {
                return sided;
            }
        }

        return [];
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
            if (Basics.Diagnostics.Nearest.Find(key, _byKey.Keys) is { } near && Basics.Diagnostics.Nearest.Distance(key, near) is int d && d < least)
            {
                (best, least) = (_names[near], d);
            }
        }

        return best;
    }

    private static void AddTo<TValue>(IDictionary<string, List<TValue>> map, string key, TValue value)
    {
        if (!map.TryGetValue(key, out List<TValue>? list))
        {
            map[key] = list = [];
        }

        list.Add(value);
    }
}
