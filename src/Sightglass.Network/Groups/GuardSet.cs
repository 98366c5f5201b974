using System.Numerics;
using System.Runtime.CompilerServices;

namespace Sightglass.Network.Groups;

/// <summary>Some of a group's guards, by their numbers. Room for them is made when guards are added, never within a step.</summary>
public sealed class GuardSet
{
    /// <summary>2⁶ = 64 guards are a word.</summary>
    private const int Shift = 6;

    private ulong[] _words = [0];
    private int _count;

    /// <summary>Counts changes: while it stays, the set is the same.</summary>
    public long Version { get; private set; }

    public bool IsEmpty => _count == 0;

    public bool this[int guard]
    {
        get => (_words[guard >> Shift] >> guard & 1) != 0;
        set
        {
            if (this[guard] != value)
            {
                _words[guard >> Shift] ^= 1UL << guard;
                _count += value ? 1 : -1;
                Version++;
            }
        }
    }

    /// <summary>The least number in the set that is not less than this one, or −1.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public int From(int guard)
    {
        ulong[] words = _words;
        int at = guard >> Shift;
        ulong word = at < words.Length ? words[at] & (ulong.MaxValue << guard) : 0;
        return word != 0 ? (at << Shift) + BitOperations.TrailingZeroCount(word) : Beyond(at);
    }

    internal void Clear()
    {
        if (_count > 0)
        {
            Array.Clear(_words);
            _count = 0;
            Version++;
        }
    }

    /// <summary>Takes over the members of a set with room for as many.</summary>
    internal void Take(GuardSet other)
    {
        other._words.CopyTo(_words, 0);
        _count = other._count;
        Version++;
    }

    /// <summary>Makes room for guards 0…count − 1.</summary>
    public void MakeRoom(int count) => Array.Resize(ref _words, Math.Max(_words.Length, (count + 63) >> Shift));

    /// <summary>The least number in the words after this one, or −1.</summary>
    private int Beyond(int at)
    {
        while (++at < _words.Length)
        {
            if (_words[at] != 0)
            {
                return (at << Shift) + BitOperations.TrailingZeroCount(_words[at]);
            }
        }

        return -1;
    }
}
