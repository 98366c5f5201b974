using Sightglass.Book.Readers;

namespace Sightglass.Book;

/// <summary>What may be a name in a book.</summary>
public static class BookNames
{
    /// <summary>Why a text can be no name; null where it can.</summary>
    public static string? WhyNot(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return NameRules.Why(name);
    }
}
