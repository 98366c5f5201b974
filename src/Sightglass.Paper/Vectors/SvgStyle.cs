using System.Globalization;
using System.Xml.Linq;

namespace Sightglass.Paper.Vectors;

/// <summary>How one element is painted: its own attributes, the classes that mean it, what it has from those around it.</summary>
internal sealed class SvgStyle
{
    private const double Rem = 16;

    private static readonly HashSet<string> s_inherited =
    [
        "fill", "stroke", "stroke-width", "stroke-dasharray", "stroke-linecap", "stroke-linejoin", "font-size", "font-family", "font-weight", "font-style", "letter-spacing", "text-anchor",
    ];

    private readonly Dictionary<string, string> _says;

    private SvgStyle(Dictionary<string, string> says) => _says = says;

    public static SvgStyle Root { get; } = new(new(StringComparer.Ordinal) { ["fill"] = "#000", ["stroke"] = "none" });

    public static SvgStyle Of(XElement element, SvgStyle around, LookRules look)
    {
        Dictionary<string, string> says = around._says.Where(p => s_inherited.Contains(p.Key)).ToDictionary(StringComparer.Ordinal);
        foreach (XAttribute attribute in element.Attributes())
        {
            says[attribute.Name.LocalName] = attribute.Value;
        }

        foreach (StyleRule rule in look.Rules.Where(r => r.Means(element)).OrderBy(r => r.Weight))
        {
            Add(says, rule.Says, look);
        }

        if ((string?)element.Attribute("style") is { } own)
        {
            Add(says, own.Split(';').Select(d => d.Split(':', 2)).Where(d => d.Length == 2).Select(d => (d[0].Trim(), d[1].Trim())), look);
        }

        return new SvgStyle(says);
    }

    public string this[string name] => _says.GetValueOrDefault(name, "");

    /// <summary>A length in pixels, or what is usual.</summary>
    public double Length(string name, double usual) => LengthOf(this[name]) ?? usual;

    public bool IsHidden => this["display"] == "none" || Length("opacity", 1) == 0;

    public bool IsSerif => this["font-family"].Contains("Serif", StringComparison.Ordinal);

    public bool IsItalic => this["font-style"] == "italic";

    public int FontWeight => int.TryParse(this["font-weight"], NumberStyles.Integer, CultureInfo.InvariantCulture, out int weight) ? weight : 400;

    public double FontSize => Length("font-size", Rem);

    /// <summary>Whether the ground shows round the words.</summary>
    public bool HasHalo => this["paint-order"].StartsWith("stroke", StringComparison.Ordinal);

    private static void Add(Dictionary<string, string> says, IEnumerable<(string Name, string Value)> declarations, LookRules look)
    {
        foreach ((string name, string value) in declarations)
        {
            string resolved = look.Resolve(value);
            if (name == "font")
            {
                AddFont(says, resolved);
            }
            else
            {
                says[name] = resolved;
            }
        }
    }

    /// <summary><c>italic 400 22px/1.2 family</c>.</summary>
    private static void AddFont(Dictionary<string, string> says, string font)
    {
        says["font-style"] = "normal";
        foreach (string word in font.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (word is "italic")
            {
                says["font-style"] = word;
            }
            else if (word.All(char.IsAsciiDigit))
            {
                says["font-weight"] = word;
            }
            else if (LengthOf(word.Split('/')[0]) is { } size)
            {
                says["font-size"] = size.ToString(CultureInfo.InvariantCulture);
                says["font-family"] = font[(font.IndexOf(word, StringComparison.Ordinal) + word.Length)..].Trim();
                return;
            }
        }
    }

    private static double? LengthOf(string text)
    {
        double scale = text.EndsWith("rem", StringComparison.Ordinal) ? Rem : 1;
        string number = text.Replace("rem", "", StringComparison.Ordinal).Replace("px", "", StringComparison.Ordinal);
        return double.TryParse(number, NumberStyles.Float, CultureInfo.InvariantCulture, out double value) ? value * scale : null;
    }
}
