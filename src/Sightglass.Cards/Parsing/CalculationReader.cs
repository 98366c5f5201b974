using System.Collections.Immutable;

namespace Sightglass.Cards.Parsing;

/// <summary>Looks into calculations before they are compiled.</summary>
internal static class CalculationReader
{
    /// <summary>The names in a calculation; a text without any, or with words side by side, gives one name that nobody knows.</summary>
    public static ImmutableArray<string> NamesIn(string text)
    {
        ImmutableArray<string>.Builder names = ImmutableArray.CreateBuilder<string>();
        int at = 0;
        while (at < text.Length)
        {
            if (!char.IsLetter(text[at]))
            {
                at++;
                continue;
            }

            int start = at;
            while (at < text.Length && (char.IsLetterOrDigit(text[at]) || text[at] == ' '))
            {
                at++;
            }

            bool isFunction = at < text.Length && text[at] == '(';
            if (!isFunction)
            {
                names.Add(text[start..at].Trim());
            }
        }

        return names.Count == 0 ? [""] : names.ToImmutable();
    }
}
