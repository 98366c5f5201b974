using Sightglass.Basics.Time;

namespace Sightglass.World.Agenda;

/// <summary>The few things that will happen, earliest first. Holds no more than a run needs, so a plain array serves.</summary>
public sealed class EventAgenda
{
    private AgendaEntry[] _entries = new AgendaEntry[16];

    public int Count { get; private set; }

    /// <summary>When the next thing happens.</summary>
    public SimTime Next => Count == 0 ? SimTime.Never : _entries[0].Time;

    /// <summary>Everything to come, earliest first.</summary>
    public ReadOnlySpan<AgendaEntry> Entries => _entries.AsSpan(0, Count);

    /// <summary>The next thing. Only where there is one.</summary>
    public AgendaEntry First => _entries[0];

    public void Add(AgendaEntry entry)
    {
        if (Count == _entries.Length)
        {
            Array.Resize(ref _entries, 2 * Count);
        }

        int at = Count++;
        while (at > 0 && _entries[at - 1].CompareTo(entry) > 0)
        {
            _entries[at] = _entries[at - 1];
            at--;
        }

        _entries[at] = entry;
    }

    public AgendaEntry TakeFirst()
    {
        AgendaEntry first = _entries[0];
        RemoveAt(0);
        return first;
    }

    /// <summary>When the first entry of a kind and number comes; null where there is none.</summary>
    public SimTime? TimeOf(AgendaKind kind, int id)
    {
        foreach (AgendaEntry entry in Entries)
        {
            if (entry.Kind == kind && entry.Id == id)
            {
                return entry.Time;
            }
        }

        return null;
    }

    /// <summary>Removes every entry of a kind and number.</summary>
    public void Remove(AgendaKind kind, int id)
    {
        for (int i = Count - 1; i >= 0; i--)
        {
            if (_entries[i].Kind == kind && _entries[i].Id == id)
            {
                RemoveAt(i);
            }
        }
    }

    public void Clear() => Count = 0;

    private void RemoveAt(int index)
    {
        Count--;
        Array.Copy(_entries, index + 1, _entries, index, Count - index);
    }
}
