using System.Collections.Immutable;
using System.Text;
using Sightglass.Basics.Quantities;
using Sightglass.Paper.Document;

namespace Sightglass.Paper.Pdf;

/// <summary>A text broken into lines.</summary>
internal static class PdfLines
{
    /// <param name="text">Its runs.</param>
    /// <param name="plain">Face of plain words.</param>
    /// <param name="size">pt.</param>
    /// <param name="width">Of the measure, pt.</param>
    public static ImmutableArray<ImmutableArray<PdfSegment>> Break(PaperText text, PaperFace plain, double size, double width)
    {
        List<ImmutableArray<PdfSegment>> lines = [];
        List<(string Word, PaperFace Face)> line = [];
        double used = 0;
        foreach (ImmutableArray<(string Part, PaperFace Face)> word in Words(text, plain))
        {
            double wide = word.Sum(p => PdfFonts.Width(p.Part, p.Face, size));
            double trailing = PdfFonts.Width(new string(' ', TrailingSpaces(word[^1].Part)), word[^1].Face, size);
            if (used > 0 && used + wide - trailing > width + 0.01)
            {
                lines.Add(Joined(line, size));
                (line, used) = ([], 0);
            }

            line.AddRange(word);
            used += wide;
        }

        lines.Add(Joined(line, size));
        return [.. lines];
    }

    /// <summary>Something without spaces, cut where it must be.</summary>
    public static ImmutableArray<string> Cut(string text, PaperFace face, double size, double width)
    {
        List<string> lines = [];
        int from = 0;
        for (int i = 1; i <= text.Length; i++)
        {
            if (i == text.Length || (i > from + 1 && PdfFonts.Width(text[from..(i + 1)], face, size) > width))
            {
                lines.Add(text[from..i]);
                from = i;
            }
        }

        return [.. lines];
    }

    private static int TrailingSpaces(string part) => part.Length - part.TrimEnd(' ').Length;

    /// <summary>Words with the spaces that follow them; a word may change its face within.</summary>
    private static IEnumerable<ImmutableArray<(string, PaperFace)>> Words(PaperText text, PaperFace plain)
    {
        List<(string, PaperFace)> word = [];
        foreach (PaperRun run in text.Runs)
        {
            PaperFace face = FaceOf(run.Style, plain);
            StringBuilder part = new();
            for (int i = 0; i < run.Text.Length; i++)
            {
                part.Append(run.Text[i]);
                bool last = i + 1 == run.Text.Length;
                if (run.Text[i] == ' ' && (last || run.Text[i + 1] != ' ') && !IsBeforeUnit(run.Text, i))
                {
                    word.Add((part.ToString(), face));
                    yield return [.. word];
                    word.Clear();
                    part.Clear();
                }
            }

            if (part.Length > 0)
            {
                word.Add((part.ToString(), face));
            }
        }

        if (word.Count > 0)
        {
            yield return [.. word];
        }
    }

    /// <summary>Whether a space stands between a number and its unit, which stay together.</summary>
    private static bool IsBeforeUnit(string text, int space)
    {
        if (space == 0 || !char.IsAsciiDigit(text[space - 1]))
        {
            return false;
        }

        int end = text.IndexOf(' ', space + 1);
        return UnitTable.Find(text[(space + 1)..(end < 0 ? text.Length : end)].TrimEnd('.', ',', ';', ':', ')')) is not null;
    }

    private static PaperFace FaceOf(RunStyle style, PaperFace plain)
    {
        bool serif = plain is PaperFace.Serif400 or PaperFace.Serif600 or PaperFace.SerifItalic400;
        return style switch
        {
            RunStyle.Strong => serif ? PaperFace.Serif600 : plain == PaperFace.Sans400 ? PaperFace.Sans600 : plain,
            RunStyle.Aside => serif ? PaperFace.SerifItalic400 : plain,
            _ => plain,
        };
    }

    private static ImmutableArray<PdfSegment> Joined(List<(string Word, PaperFace Face)> line, double size)
    {
        List<PdfSegment> segments = [];
        double x = 0;
        foreach ((string word, PaperFace face) in line)
        {
            if (segments.Count > 0 && segments[^1].Face == face)
            {
                segments[^1] = segments[^1] with { Text = segments[^1].Text + PdfFonts.Drawn(word) };
            }
            else
            {
                segments.Add(new(PdfFonts.Drawn(word), face, x));
            }

            x += PdfFonts.Width(word, face, size);
        }

        return [.. segments];
    }
}
