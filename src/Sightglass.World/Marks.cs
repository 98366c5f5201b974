using System.Numerics;

namespace Sightglass.World;

/// <summary>Some of the numbers from 0 to a given one, gone through in order.</summary>
internal sealed class Marks(int count)
{
    /// <summary>2⁶ = 64 numbers are a word.</summary>
    private const int Shift = 6;

    private readonly ulong[] _words = new ulong[(count + 63) >> Shift];

    public bool IsEmpty { get; private set; } = true;

    public bool this[int number] => (_words[number >> Shift] >> number & 1) != 0;

    public void Add(int number)
    {
        _words[number >> Shift] |= 1UL << number;
        IsEmpty = false;
    }

    public void Add(ReadOnlySpan<int> numbers)
    {
        foreach (int number in numbers)
        {
            Add(number);
        }
    }

    public void AddAll()
    {
        for (int number = 0; number < count; number++)
        {
            Add(number);
        }
    }

    public void Clear()
    {
        if (!IsEmpty)
        {
            Array.Clear(_words);
            IsEmpty = true;
        }
    }

    public void Take(int number) => _words[number >> Shift] &= ~(1UL << number);

    /// <summary>The least number marked that is not less than this one, or −1.</summary>
    public int From(int number)
    {
        int at = number >> Shift;
        if (at >= _words.Length)
        {
            return -1;
        }

        ulong word = _words[at] & (ulong.MaxValue << number);
        while (word == 0)
        {
            if (++at == _words.Length)
            {
                return -1;
            }

            word = _words[at];
        }

        return (at << Shift) + BitOperations.TrailingZeroCount(word);
    }
}
