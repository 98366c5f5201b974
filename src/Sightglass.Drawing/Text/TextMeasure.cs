using System.Text;

namespace Sightglass.Drawing.Text;

/// <summary>Widths of text from the fonts' own advance widths.</summary>
public static class TextMeasure
{
    /// <summary>
    /// Width in pixels at a font size in pixels. Kerning is left out (it makes text narrower more often than wider:
    /// seen within −2 … +0.5 % against a browser); a character that the font lacks counts 0.6 em.
    /// </summary>
    public static double Width(string text, TextFace face, double size)
    {
        ushort[] table = Table(face);
        double sum = 0;
        foreach (Rune rune in text.EnumerateRunes())
        {
            sum += Advance(table, rune.Value);
        }

        return sum * size / 1000;
    }

    /// <summary>The longest beginning of the text that fits, with an ellipsis where something was cut.</summary>
    public static string Fit(string text, TextFace face, double size, double width)
    {
        if (Width(text, face, size) <= width)
        {
            return text;
        }

        int length = text.Length;
        while (length > 1 && Width(text[..length].TrimEnd() + "…", face, size) > width)
        {
            length--;
        }

        return text[..length].TrimEnd() + "…";
    }

    /// <summary>Breaks text into lines no wider than asked where words allow it.</summary>
    public static IReadOnlyList<string> Wrap(string text, TextFace face, double size, double width)
    {
        List<string> lines = [];
        string line = "";
        foreach (string word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            string longer = line.Length == 0 ? word : line + " " + word;
            if (line.Length > 0 && Width(longer, face, size) > width)
            {
                lines.Add(line);
                longer = word;
            }

            line = longer;
        }

        lines.Add(line);
        return lines;
    }

    private static double Advance(ushort[] table, int character)
    {
        const int latin = 256 - 32;
        const double unknown = 600;
        const double narrowSpace = 200;
        if (character is 0x202F or 0x2009)
        {
            return narrowSpace;
        }

        int index = character is >= 32 and < 256 ? character - 32 : FontAdvances.Extra.IndexOf((char)Math.Min(character, 0xFFFF), StringComparison.Ordinal);
        if (index < 0)
        {
            return unknown;
        }

        int advance = character < 256 ? table[index] : table[latin + index];
        return advance > 0 ? advance : unknown;
    }

    private static ushort[] Table(TextFace face) => face switch
    {
        TextFace.Sans400 => FontAdvances.Sans400,
        TextFace.Sans500 => FontAdvances.Sans500,
        TextFace.Sans600 => FontAdvances.Sans600,
        TextFace.Sans700 => FontAdvances.Sans700,
        TextFace.Serif400 => FontAdvances.Serif400,
        TextFace.Serif600 => FontAdvances.Serif600,
        _ => FontAdvances.SerifItalic400,
    };
}
