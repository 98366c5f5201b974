using System.Text;

namespace Sightglass.Drawing.Svg;

/// <summary>Names as ids: lower-case letters and digits joined by hyphens.</summary>
public static class Slug
{
    /// <summary><c>Forward sight glass, right</c> becomes <c>forward-sight-glass-right</c>; anything but ASCII letters and digits becomes a hyphen or its code.</summary>
    public static string Of(string name)
    {
        StringBuilder slug = new();
        foreach (char c in name.ToLowerInvariant())
        {
            if (char.IsAsciiLetterOrDigit(c))
            {
                slug.Append(c);
            }
            else if (c > 127)
            {
                slug.Append('u').Append(((int)c).ToString("x", System.Globalization.CultureInfo.InvariantCulture));
            }
            else if (slug.Length > 0 && slug[^1] != '-')
            {
                slug.Append('-');
            }
        }

        return slug.ToString().TrimEnd('-');
    }
}
