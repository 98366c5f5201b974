using System.Collections.Immutable;
using System.Globalization;

namespace Sightglass.Reference.Tests.Networks;

/// <summary>Reads the words of a <c>.net</c> file one by one.</summary>
internal sealed class NetReader(string text)
{
    private readonly string[] _words = text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
    private int _next;

    public (double End, double Every) Times()
    {
        Expect("tend");
        return (Number(), Number());
    }

    public ImmutableArray<T> Section<T>(string name, Func<T> row)
    {
        Expect(name);
        int count = Index();
        ImmutableArray<T>.Builder rows = ImmutableArray.CreateBuilder<T>(count);
        for (int i = 0; i < count; i++)
        {
            rows.Add(row());
        }

        return rows.MoveToImmutable();
    }

    public string Word() => _next < _words.Length ? _words[_next++] : throw new FormatException("The file ends too early.");

    public double Number() => double.Parse(Word(), NumberStyles.Float, CultureInfo.InvariantCulture);

    public int Index() => int.Parse(Word(), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture);

    private void Expect(string word)
    {
        string found = Word();
        if (found != word)
        {
            throw new FormatException($"Word {_next}: `{word}` was expected, `{found}` found.");
        }
    }
}
