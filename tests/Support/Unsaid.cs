using System.Text;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Sightglass.Basics.Language;
using Sightglass.Book.Language;
using Sightglass.Book.Model;

namespace Sightglass.Tests.Support;

/// <summary>Finds words that are shown without having been said: everything said, and everything looked up in the book, stands between marks.</summary>
internal static partial class Unsaid
{
    /// <summary>The marks with those of a book.</summary>
    public static Tongue Tongue(ClassBook book)
    {
        HashSet<string> texts = [.. BookTexts.Of(book).Select(t => t.Text)];
        return Basics.Language.Tongue.Marked.With(text => texts.Contains(text) ? $"⟦{text}⟧" : null);
    }

    /// <summary>What a person reads or hears of a page or drawing, and was not said.</summary>
    /// <param name="xml">Well formed.</param>
    /// <param name="known">What is right unsaid, as whole texts or parts between the marks.</param>
    public static IEnumerable<string> In(string xml, params IEnumerable<string> known)
    {
        XElement page = XElement.Parse("<page>" + xml.Replace("&nbsp;", "\u00A0", StringComparison.Ordinal) + "</page>");
        IEnumerable<string> texts = page.DescendantNodes().OfType<XText>().Where(t => t.Parent!.Name.LocalName is not ("style" or "script")).Select(t => t.Value)
            .Concat(page.Descendants().Attributes().Where(a => a.Name.LocalName is "aria-label" or "alt" or "title").Select(a => a.Value));
        return Texts(texts, known);
    }

    /// <summary>The same of a diagram: its names are wrapped, so that a line may be the piece of a name of the book that has lost its marks.</summary>
    public static IEnumerable<string> InDiagram(string xml, ClassBook book, params IEnumerable<string> known)
    {
        string[] names = [.. BookTexts.Of(book).Select(t => t.Text)];
        return In(xml, known).Where(line => !names.Any(n => n.Contains(line.Replace("⟦", "", StringComparison.Ordinal).Replace("⟧", "", StringComparison.Ordinal).TrimEnd('s', ' '), StringComparison.OrdinalIgnoreCase)));
    }

    /// <summary>The same of plain texts.</summary>
    public static IEnumerable<string> Texts(IEnumerable<string> texts, params IEnumerable<string> known)
    {
        string[] right = [.. known];
        return texts.Where(t => !right.Contains(t.Trim())).Where(t => Left(t).Split('⟧').Any(part => Unit().Replace(part, "").Any(char.IsLetter) && !right.Contains(part.Trim(' ', '.', ',', ':', ';')))).Distinct();
    }

    /// <summary>What stands outside of all marks, parted where one stood.</summary>
    private static string Left(string text)
    {
        StringBuilder left = new();
        int depth = 0;
        foreach (char c in text)
        {
            depth += c == '⟦' ? 1 : 0;
            if (depth == 0)
            {
                left.Append(c);
            }

            if (c == '⟧')
            {
                depth--;
                left.Append(depth == 0 ? '⟧' : "");
            }
        }

        return left.ToString();
    }

    /// <summary>A number with its unit: the same in all languages.</summary>
    [GeneratedRegex(@"[\d.,\u202F\u2212+/%-]+[\s\u00A0\u202F]*(US gal|gal|psi|kPa|mm|in|ft|L|m|s|min|h|mph|°C|°F|W|V|A|kW|%)?(/(min|h|s))?\b")]
    private static partial Regex Unit();
}
