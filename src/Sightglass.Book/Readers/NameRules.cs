using Sightglass.Book.Messages;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Readers;

/// <summary>What may be a name: phrases that formulas and cards can tell from numbers, signs and their own words.</summary>
internal static class NameRules
{
    private const int Longest = 120;
    private static readonly HashSet<string> s_reserved = new(StringComparer.Ordinal) { "outside", "frame", "and", "or", "not", "min", "max", "abs", "removed" };

    public static bool Check(YamlScalar key, ReadContext context)
    {
        string? why = Why(key.Value);
        if (why is not null && !context.Found.IsDamaged(key.Span))
        {
            context.Add(BookMessages.BadName(key.Span, key.Value, why));
        }

        return why is null;
    }

    /// <summary>Why a text can be no name; null where it can.</summary>
    public static string? Why(string name)
    {
        if (name.Length == 0)
        {
            return "it is empty";
        }

        if (name.Length > Longest)
        {
            return $"it is longer than {Longest} characters";
        }

        if (s_reserved.Contains(name))
        {
            return "the word has a meaning of its own";
        }

        if (name.Trim() != name || name.Contains("  ", StringComparison.Ordinal))
        {
            return "it has a space too many";
        }

        char bad = name.FirstOrDefault(c => !char.IsLetterOrDigit(c) && c is not (' ' or ',' or '-' or '.' or '\'' or '’' or '&'));
        if (bad != default)
        {
            return $"it contains `{bad}`";
        }

        return char.IsLetterOrDigit(name[0]) && !name.EndsWith(',') ? null : "it must begin with a letter or digit and not end in a comma";
    }
}
