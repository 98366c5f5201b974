namespace Sightglass.Basics.Language;

/// <summary>Several of a thing that has a name: drawings name a row of like parts once. English and Spanish; a name may have more words behind its noun or before it.</summary>
public static class Plural
{
    /// <summary>Words that begin what tells one thing from another and cannot end a name.</summary>
    private static readonly string[] s_joining = ["de", "del", "de la", "al", "a", "en", "el", "la"];

    private static readonly string[] s_joiningInEnglish = ["the", "of", "into", "to", "in", "from", "at", "by", "and"];

    /// <param name="name">In the language that is spoken.</param>
    public static string Of(string name)
    {
        ArgumentException.ThrowIfNullOrEmpty(name);
        return Tongue.Spoken.Code == Tongue.Spanish.Code ? Spanish(name) : name.EndsWith('s') || name.EndsWith('x') ? name + "es" : name + "s";
    }

    /// <summary>A name of which the last words were taken away, without the small words that joined them.</summary>
    public static string Trimmed(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        string[] joins = Tongue.Spoken.Code == Tongue.Spanish.Code ? s_joining : s_joiningInEnglish;
        while (Array.Find(joins, w => name.EndsWith(" " + w, StringComparison.Ordinal)) is { } joining)
        {
            name = name[..^(joining.Length + 1)].TrimEnd(',');
        }

        return name;
    }

    // The noun stands first; a vowel takes s, z becomes ces, anything else takes es.
    private static string Spanish(string name)
    {
        int end = name.IndexOfAny([' ', ',']) is >= 0 and var space ? space : name.Length;
        string noun = name[..end];
        string several = "aeiouáéó".Contains(noun[^1], StringComparison.Ordinal) ? noun + "s"
            : noun.EndsWith("ión", StringComparison.Ordinal) ? noun[..^3] + "iones"
            : noun.EndsWith('z') ? noun[..^1] + "ces"
            : noun.EndsWith('s') ? noun
            : noun + "es";
        return several + name[end..];
    }
}
