using System.Text;
using Sightglass.Basics.Quantities;

namespace Sightglass.Basics.Formulas;

/// <summary>Finds the longest name or unit that starts at a place of a text, and how far an unknown one reaches.</summary>
internal static class FormulaScan
{
    private const int LongestUnit = 40;

    public static bool IsWordStart(char c) => char.IsLetter(c);

    public static bool IsWordPart(char c) => char.IsLetterOrDigit(c) || c == '_';

    /// <summary>True when this word stands here, as a whole word.</summary>
    public static bool HasWord(string text, int at, string word)
    {
        int end = at + word.Length;
        return end <= text.Length && string.CompareOrdinal(text, at, word, 0, word.Length) == 0
            && (end == text.Length || !(IsWordPart(text[end]) || IsInnerHyphen(text, end)));
    }

    /// <summary>The longest phrase in scope that starts here.</summary>
    public static bool TryName(string text, int at, INameScope scope, out FormulaName name, out int end)
    {
        foreach ((string phrase, int stop) in Phrases(text, at, scope.LongestName, IsInsideName))
        {
            if (scope.TryGet(phrase, out name))
            {
                end = stop;
                return true;
            }
        }

        name = default;
        end = at;
        return false;
    }

    /// <summary>The longest unit that starts here; not one that reads <c>min</c> where the function stands.</summary>
    public static bool TryUnit(string text, int at, out Unit unit, out int end)
    {
        foreach ((string phrase, int stop) in Phrases(text, at, LongestUnit, IsInsideUnit))
        {
            bool isFunction = stop < text.Length && text[stop] == '(';
            if (phrase != "1" && !isFunction && UnitTable.Find(phrase) is { } known)
            {
                (unit, end) = (known, stop);
                return true;
            }
        }

        (unit, end) = (UnitTable.One, at);
        return false;
    }

    /// <summary>Where a phrase that is not in scope ends: at an operator, <c>and</c>, <c>or</c>, or (inside a function) a comma.</summary>
    public static int PhraseEnd(string text, int at, bool commaEnds)
    {
        int end = at;
        for (int i = at; i < text.Length; i++)
        {
            char c = text[i];
            if (IsWordPart(c))
            {
                if ((i == at || !IsWordPart(text[i - 1])) && i > at && (HasWord(text, i, "and") || HasWord(text, i, "or")))
                {
                    break;
                }

                end = i + 1;
            }
            else if (!char.IsWhiteSpace(c) && !IsInsideName(text, i) || (c == ',' && commaEnds))
            {
                break;
            }
        }

        return Math.Max(end, at + 1);
    }

    /// <summary>Where an unknown unit ends: at a space or an operator; <c>/</c> between letters belongs to it.</summary>
    public static int UnitEnd(string text, int at)
    {
        int end = at;
        while (end < text.Length && (IsWordPart(text[end]) || (text[end] == '/' && end + 1 < text.Length && IsWordStart(text[end + 1]))))
        {
            end++;
        }

        return Math.Max(end, at + 1);
    }

    /// <summary>Every phrase from here that ends with a word, the longest first; spaces inside as one.</summary>
    private static IEnumerable<(string Phrase, int End)> Phrases(string text, int at, int longest, Func<string, int, bool> inside)
    {
        StringBuilder kept = new();
        List<(int Length, int End)> ends = [];
        for (int i = at; i < text.Length && kept.Length < longest && (char.IsWhiteSpace(text[i]) || inside(text, i)); i++)
        {
            if (!char.IsWhiteSpace(text[i]))
            {
                kept.Append(text[i]);
            }
            else if (kept.Length > 0 && kept[^1] != ' ')
            {
                kept.Append(' ');
            }

            if (EndsWord(text, i))
            {
                ends.Add((kept.Length, i + 1));
            }
        }

        for (int i = ends.Count - 1; i >= 0; i--)
        {
            yield return (kept.ToString(0, ends[i].Length), ends[i].End);
        }
    }

    private static bool EndsWord(string text, int i)
    {
        char c = text[i];
        bool word = IsWordPart(c) || c is '%' or '°' or '²' or '³' or '.';
        return word && (i + 1 == text.Length || !(IsWordPart(text[i + 1]) || text[i + 1] is '²' or '³' or '^'));
    }

    private static bool IsInsideName(string text, int i) =>
        IsWordPart(text[i]) || text[i] is ',' or '.' or '&' or '#' || IsInnerHyphen(text, i);

    private static bool IsInsideUnit(string text, int i) =>
        IsWordPart(text[i]) || text[i] is '/' or '^' or '%' or '°' or '²' or '³' or '·' or 'Ω';

    /// <summary>A hyphen, apostrophe or stroke between two letters or digits.</summary>
    private static bool IsInnerHyphen(string text, int i) =>
        i > 0 && i + 1 < text.Length && text[i] is '-' or '\'' or '’' or '/' && IsWordPart(text[i - 1]) && IsWordPart(text[i + 1]);
}
