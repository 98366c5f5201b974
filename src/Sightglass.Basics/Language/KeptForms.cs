using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;

namespace Sightglass.Basics.Language;

/// <summary>
/// Short texts that are kept put together, in English and in names of the book, because something is counted, compared or recorded by them: each is found again
/// by its form, and said.
/// </summary>
/// <param name="forms">A form with <c>{0}</c>, <c>{1}</c> for names, and how it is said; the first that fits is taken.</param>
public sealed class KeptForms(params (string Form, Func<string> Said)[] forms)
{
    private readonly ImmutableArray<(Regex Form, Func<string> Said)> _forms = [.. forms.Select(f => (Pattern(f.Form), f.Said))];

    /// <summary>A kept text in the language that is spoken; null where it has none of the forms.</summary>
    /// <param name="kept">As it was put together.</param>
    /// <param name="gap">How what stands in a gap is said.</param>
    public string? Find(string kept, Func<string, string> gap)
    {
        ArgumentNullException.ThrowIfNull(kept);
        ArgumentNullException.ThrowIfNull(gap);
        foreach ((Regex form, Func<string> said) in _forms)
        {
            if (form.Match(kept) is { Success: true } match)
            {
                return string.Format(CultureInfo.InvariantCulture, said(), [.. match.Groups.Values.Skip(1).Select(g => (object)gap(g.Value))]);
            }
        }

        return null;
    }

    private static Regex Pattern(string form) =>
        new($"^{Regex.Replace(Regex.Escape(form), @"\\\{\d}", "(.+?)")}$", RegexOptions.CultureInvariant | RegexOptions.Singleline, TimeSpan.FromSeconds(1));
}
