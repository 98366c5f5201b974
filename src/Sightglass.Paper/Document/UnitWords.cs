using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using Sightglass.Basics.Language;
using Sightglass.Basics.Quantities;

namespace Sightglass.Paper.Document;

/// <summary>
/// Says quantities in other units, in brackets after the ones that the book has: what an instrument shows stays what it shows. The words of a
/// card are never touched, because they are what was tried.
/// </summary>
public static partial class UnitWords
{
    /// <summary>Each way there and back: a unit, and the one of the other system that people of that system would say.</summary>
    private static readonly (string Si, string Us)[] s_pairs =
    [
        ("kPa", "psi"), ("L", "US gal"), ("L/min", "US gal/min"), ("m", "ft"), ("cm", "in"), ("mm", "in"), ("km", "mi"), ("km/h", "mph"), ("degC", "degF"), ("kg", "lb"), ("t", "short ton"), ("m/s", "ft/s"), ("bar", "psi"),
    ];

    /// <summary>The paper with its quantities in the units that are wanted.</summary>
    public static PaperDocument In(this PaperDocument paper, PaperUnits units)
    {
        ArgumentNullException.ThrowIfNull(paper);
        return units == PaperUnits.Book ? paper : paper with { Blocks = [.. paper.Blocks.Select(b => In(b, units))] };
    }

    /// <summary>A text with the brackets.</summary>
    public static string In(string text, PaperUnits units) => units == PaperUnits.Book ? text : Quantity().Replace(text, m => m.Value + Bracket(m, units));

    private static string Bracket(Match match, PaperUnits units)
    {
        string symbol = match.Groups["unit"].Value switch { "°C" => "degC", "°F" => "degF", "gal" => "US gal", var written => written.Replace('\u00A0', ' ') };
        string? other = units == PaperUnits.Us ? s_pairs.FirstOrDefault(p => p.Si == symbol).Us : s_pairs.FirstOrDefault(p => p.Us == symbol).Si;
        if (other is null || UnitTable.Find(symbol) is not { } from)
        {
            return "";
        }

        Unit to = UnitTable.Get(other);
        string last = Said(match.Groups["number"].Value, from, to);
        string symbolOfOther = QuantityFormat.Symbol(to);
        string said = match.Groups["first"].Success ? Say.With($"{Said(match.Groups["first"].Value, from, to)} to {last}\u00A0{symbolOfOther}") : $"{last}\u00A0{symbolOfOther}";
        return $" ({said})";
    }

    /// <summary>As many significant digits as there were, two at least, three at most.</summary>
    private static string Said(string number, Unit from, Unit to)
    {
        string plain = Separator().Replace(number, "");
        double value = to.FromSi(from.ToSi(double.Parse(plain.Replace('−', '-'), CultureInfo.InvariantCulture)));
        int digits = Math.Clamp(plain.Count(char.IsAsciiDigit), 2, 3);
        double size = Math.Abs(value) > 0 ? Math.Floor(Math.Log10(Math.Abs(value))) : 0;
        double step = Math.Pow(10, size - digits + 1);
        double rounded = Math.Round(value / step, MidpointRounding.AwayFromZero) * step;
        return rounded.ToString(step >= 1 ? "#,0" : "0." + new string('0', (int)Math.Round(-Math.Log10(step))), CultureInfo.InvariantCulture).Replace(',', '\u202F').Replace('-', '−');
    }

    private static PaperBlock In(PaperBlock block, PaperUnits units) => block switch
    {
        PaperBlock.Heading heading => heading with { Text = In(heading.Text, units) },
        PaperBlock.Paragraph paragraph => paragraph with { Text = In(paragraph.Text, units) },
        PaperBlock.Bullets bullets => bullets with { Lines = In(bullets.Lines, units) },
        PaperBlock.Ticks ticks => ticks with { Lines = In(ticks.Lines, units) },
        PaperBlock.Table table => table with { Rows = [.. table.Rows.Select(r => In(r, units))] },
        PaperBlock.Notice notice => notice with { Text = In(notice.Text, units) },
        PaperBlock.Box box => box with { Blocks = [.. box.Blocks.Select(b => In(b, units))] },
        PaperBlock.Columns columns => new PaperBlock.Columns([.. columns.Left.Select(b => In(b, units))], [.. columns.Right.Select(b => In(b, units))]),
        _ => block,
    };

    private static ImmutableArray<PaperText> In(ImmutableArray<PaperText> texts, PaperUnits units) => [.. texts.Select(t => In(t, units))];

    private static PaperText In(PaperText text, PaperUnits units) => new([.. text.Runs.Select(r => r.Verbatim ? r : r with { Text = In(r.Text, units) })]);

    [GeneratedRegex(@"(?<![\w.,/])(?:(?<first>[-−]?\d[\d.,\u202F\u00A0]*)(?: to | a | … |–))?(?<number>[-−]?\d(?:[\d.,\u202F\u00A0]*\d)?)[ \u00A0\u202F](?<unit>US[ \u00A0]gal/min|US[ \u00A0]gal|gal|short[ \u00A0]ton|L/min|km/h|m/s|ft/s|kPa|psi|bar|km|mph|mm|cm|kg|lb|mi|ft|in|°C|°F|L|m|t)(?![\w/²³])")]
    private static partial Regex Quantity();

    [GeneratedRegex(@"[\u202F\u00A0,]")]
    private static partial Regex Separator();
}
