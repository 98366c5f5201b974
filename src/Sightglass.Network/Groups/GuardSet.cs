using System.Numerics;

namespace Sightglass.Network.Groups;

/// <summary>Some of a group's guards, by their numbers. Room for them is made when guards are added, never within a step.</summary>
internal sealed class GuardSet
{
    private const int InAWord = 64;

    private ulong[] _words = [0];

    public bool IsEmpty
    {
        get
        {
            foreach (ulong word in _words)
            {
                if (word != 0)
                {
                    return false;
                }
            }

            return true;
        }
    }

    public bool this[int guard]
    {
        get => (_words[guard / InAWord] >> (guard % InAWord) & 1) != 0;
        set
        {
            ulong bit = 1UL << (guard % InAWord);
            ref ulong word = ref _words[guard / InAWord];
            word = value ? word | bit : word & ~bit;
        }
    }

    /// <summary>The least number in the set that is not less than this one, or −1.</summary>
    public int From(int guard)
    {
        int at = guard / InAWord;
        if (at >= _words.Length)
        {
            return -1;
        }

        ulong word = _words[at] & (ulong.MaxValue << (guard % InAWord));
        while (word == 0)
        {
            if (++at == _words.Length)
            {
                return -1;
            }

            word = _words[at];
        }

        return (at * InAWord) + BitOperations.TrailingZeroCount(word);
    }

    public void Clear() => Array.Clear(_words);

    /// <summary>Takes over the members of a set with room for as many.</summary>
    public void Take(GuardSet other) => other._words.CopyTo(_words, 0);

    /// <summary>Makes room for guards 0…count − 1.</summary>
    public void MakeRoom(int count) => Array.Resize(ref _words, Math.Max(_words.Length, (count + InAWord - 1) / InAWord));
}
