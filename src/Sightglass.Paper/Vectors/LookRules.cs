using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Sightglass.Drawing.Look;

namespace Sightglass.Paper.Vectors;

/// <summary>
/// The look's classes as print has them, read from its own sheets: black on white, media by pattern. Only what the sheets use is
/// understood: types, classes and attributes, one within the other, and variables; a rule with more (a hover, a motion) is for screens and left out.
/// </summary>
internal sealed partial class LookRules
{
    private readonly Dictionary<string, string> _variables = new(StringComparer.Ordinal);
    private readonly List<StyleRule> _rules = [];

    private LookRules(string css)
    {
        Read(Comment().Replace(css, ""), print: false);
        Read(Comment().Replace(css, ""), print: true);
    }

    public static LookRules Print { get; } = new(LookStyle.Css(fonts: false));

    /// <summary>Rules in the order in which they win.</summary>
    public IEnumerable<StyleRule> Rules => _rules;

    /// <summary>A value with its variables put in.</summary>
    public string Resolve(string value)
    {
        for (int depth = 0; depth < 4 && value.Contains("var(", StringComparison.Ordinal); depth++)
        {
            value = Variable().Replace(value, m => _variables.GetValueOrDefault(m.Groups["name"].Value, ""));
        }

        return value;
    }

    /// <summary>Twice over the sheet: what is always so, then what is so in print.</summary>
    private void Read(string css, bool print)
    {
        int at = 0;
        while (css.IndexOf('{', at) is >= 0 and var open)
        {
            string head = css[at..open].Trim();
            int close = Closing(css, open);
            string body = css[(open + 1)..close];
            at = close + 1;
            if (head.StartsWith("@media print", StringComparison.Ordinal) && print)
            {
                ReadRules(body);
            }
            else if (head[0] != '@' && head.Contains("[data-theme=print]", StringComparison.Ordinal) == print && !head.Contains("data-theme=dark", StringComparison.Ordinal))
            {
                Add(head, body);
            }
        }
    }

    private void ReadRules(string css)
    {
        foreach (Match rule in Rule().Matches(css))
        {
            Add(rule.Groups["head"].Value, rule.Groups["body"].Value);
        }
    }

    private void Add(string head, string body)
    {
        ImmutableArray<(string, string)> says = [.. body.Split(';').Select(d => d.Split(':', 2)).Where(d => d.Length == 2).Select(d => (d[0].Trim(), d[1].Replace("!important", "", StringComparison.Ordinal).Trim()))];
        foreach (string selector in head.Split(',').Select(s => s.Trim()))
        {
            string[] parts = [.. selector.Split(' ', StringSplitOptions.RemoveEmptyEntries).Where(p => !p.StartsWith(":root", StringComparison.Ordinal))];
            if (parts.Length == 0 || parts is ["*"])
            {
                foreach ((string name, string value) in says.Where(s => s.Item1.StartsWith("--", StringComparison.Ordinal)))
                {
                    _variables[name] = value;
                }
            }
            else if (parts.All(p => Compound().IsMatch(p)))
            {
                _rules.Add(new StyleRule([.. parts.Select(p => Simple().Matches(p).Select(m => m.Value).ToImmutableArray())], says));
            }
        }
    }

    private static int Closing(string css, int open)
    {
        int depth = 0;
        for (int i = open; i < css.Length; i++)
        {
            depth += css[i] == '{' ? 1 : css[i] == '}' ? -1 : 0;
            if (depth == 0)
            {
                return i;
            }
        }

        return css.Length - 1;
    }

    [GeneratedRegex(@"/\*.*?\*/", RegexOptions.Singleline)]
    private static partial Regex Comment();

    [GeneratedRegex(@"var\((?<name>--[\w-]+)\)")]
    private static partial Regex Variable();

    [GeneratedRegex(@"(?<head>[^{}]+)\{(?<body>[^{}]*)\}")]
    private static partial Regex Rule();

    [GeneratedRegex(@"^(\*|[\w-]+)?(\.[\w-]+|\[[\w-]+=[\w-]+\])*$")]
    private static partial Regex Compound();

    [GeneratedRegex(@"\*|\.[\w-]+|\[[\w-]+=[\w-]+\]|[\w-]+")]
    private static partial Regex Simple();
}
