using System.Collections.Immutable;
using System.Net;
using System.Text;
using Sightglass.Basics.Language;
using Sightglass.Book.Model;
using Sightglass.Paper.Document;
using Sightglass.Paper.Vectors;

namespace Sightglass.Paper.Html;

/// <summary>Writes a paper as one element, for a page that has the look's sheet and <see cref="PaperFiles.Css"/>.</summary>
public static class HtmlPaper
{
    private const string Mark = "<svg viewBox=\"0 0 18 16\" aria-hidden=\"true\"><path d=\"M9 .8 17.4 15.2H.6z\" fill=\"currentColor\"/><path d=\"M9 5.2v5.2M9 12v1.7\" stroke=\"var(--mark)\" stroke-width=\"1.9\"/></svg>";

    /// <param name="paper">What is written.</param>
    /// <param name="alone">Whether its pictures stand in it; else they are found where the page is served.</param>
    public static string Write(PaperDocument paper, bool alone = false)
    {
        ArgumentNullException.ThrowIfNull(paper);
        StringBuilder page = new();
        page.Append("<article class=\"paper ").Append(paper.Look.ToString().ToLowerInvariant());
        if (paper.Style.Length > 0 && paper.Style != "pocket")
        {
            page.Append(' ').Append(paper.Style);
        }

        page.Append("\">");
        for (int i = 0; i < paper.Blocks.Length;)
        {
            int kept = Together(paper.Blocks, i);
            if (kept > 1)
            {
                Group(page, "together", paper.Blocks.AsSpan(i, kept).ToArray(), alone);
            }
            else
            {
                Write(page, paper.Blocks[i], alone);
            }

            i += kept;
        }

        return page.Append("</article>").ToString();
    }

    /// <summary>How many blocks stand on one leaf: the heading of a stop, all its cautions, and the first that is shown there.</summary>
    private static int Together(ImmutableArray<PaperBlock> blocks, int at)
    {
        if (blocks[at] is not PaperBlock.Heading { Number: not null })
        {
            return 1;
        }

        int end = at + 1;
        while (end < blocks.Length && blocks[end] is PaperBlock.Notice)
        {
            end++;
        }

        return end - at + (end < blocks.Length && blocks[end] is (PaperBlock.Photos or PaperBlock.Paragraph) ? 1 : 0);
    }

    private static void Write(StringBuilder page, PaperBlock block, bool alone)
    {
        switch (block)
        {
            case PaperBlock.Heading heading:
                Heading(page, heading);
                break;
            case PaperBlock.Paragraph paragraph:
                Paragraph(page, paragraph);
                break;
            case PaperBlock.Bullets bullets:
                List(page, "list", bullets.Lines);
                break;
            case PaperBlock.Ticks ticks:
                List(page, "ticks", ticks.Lines);
                break;
            case PaperBlock.Steps steps:
                Steps(page, steps);
                break;
            case PaperBlock.Table table:
                Table(page, table);
                break;
            case PaperBlock.Notice notice:
                Notice(page, notice.Word, notice.Text);
                break;
            case PaperBlock.Picture picture:
                Picture(page, picture);
                break;
            case PaperBlock.Photos photos:
                HtmlPhotos.Write(page, photos, alone);
                break;
            case PaperBlock.Code code:
                Code(page, code);
                break;
            case PaperBlock.Box box:
                Group(page, "box", box.Blocks, alone);
                break;
            case PaperBlock.Columns columns:
                page.Append("<div class=\"two\">");
                Group(page, "", columns.Left, alone);
                Group(page, "", columns.Right, alone);
                page.Append("</div>");
                break;
            case PaperBlock.PageBreak:
                page.Append("<div class=\"break\"></div>");
                break;
        }
    }

    private static void Group(StringBuilder page, string style, IEnumerable<PaperBlock> blocks, bool alone)
    {
        page.Append(style.Length == 0 ? "<div>" : $"<div class=\"{style}\">");
        foreach (PaperBlock block in blocks)
        {
            Write(page, block, alone);
        }

        page.Append("</div>");
    }

    private static void Heading(StringBuilder page, PaperBlock.Heading heading)
    {
        string element = $"h{heading.Level}";
        string focus = heading.Level == 1 ? " tabindex=\"-1\"" : "";
        bool line = heading.Number is not null || heading.Aside is not null;
        page.Append(line ? "<header class=\"stop\">" : "");
        page.Append(heading.Number is { } number ? $"<span class=\"num\">{Text(number)}</span>" : "");
        page.Append('<').Append(element).Append(focus).Append('>').Append(Text(heading.Text)).Append("</").Append(element).Append('>');
        page.Append(heading.Aside is { } aside ? $"<span class=\"small\">{Text(aside)}</span>" : "").Append(line ? "</header>" : "");
    }

    private static void Paragraph(StringBuilder page, PaperBlock.Paragraph paragraph)
    {
        string style = paragraph.Sort switch
        {
            ParagraphSort.Eyebrow => "eyebrow",
            ParagraphSort.Lead => "lead",
            ParagraphSort.Small => "small",
            ParagraphSort.Head => "headline",
            ParagraphSort.Loud => "loud",
            _ => "",
        };
        page.Append(paragraph.Tag is { } tag ? $"<div class=\"tagged\"><span class=\"tag\">{Text(tag)}</span>" : "");
        page.Append(style.Length == 0 ? "<p>" : $"<p class=\"{style}\">").Append(Text(paragraph.Text)).Append("</p>").Append(paragraph.Tag is null ? "" : "</div>");
    }

    private static void List(StringBuilder page, string style, IEnumerable<PaperText> lines)
    {
        page.Append("<ul class=\"").Append(style).Append("\">");
        foreach (PaperText line in lines)
        {
            page.Append("<li>").Append(style == "ticks" ? $"<span>{Text(line)}</span>" : Text(line)).Append("</li>");
        }

        page.Append("</ul>");
    }

    private static void Steps(StringBuilder page, PaperBlock.Steps steps)
    {
        page.Append("<ol class=\"steps\">");
        foreach (StepLine line in steps.Lines)
        {
            switch (line)
            {
                case StepLine.Step step:
                    page.Append("<li><span class=\"n\">").Append(Text(step.Label)).Append("</span><span>").Append(Text(step.Text)).Append("</span></li>");
                    break;
                case StepLine.Item:
                    page.Append("<li class=\"line\"><span aria-hidden=\"true\">–</span><span>").Append(Text(line.Text)).Append("</span></li>");
                    break;
                case StepLine.Notice notice:
                    page.Append("<li class=\"notice\">");
                    Notice(page, notice.Word, notice.Text);
                    page.Append("</li>");
                    break;
            }
        }

        page.Append("</ol>");
    }

    private static void Notice(StringBuilder page, SignalWord word, PaperText text)
    {
        string name = Say.Word(word.ToString());
        page.Append("<div class=\"hz ").Append(word.ToString().ToLowerInvariant()).Append("\" role=\"note\"><h4 role=\"none\">").Append(word == SignalWord.Notice ? "" : Mark).Append(Text(name.ToUpperInvariant())).Append("</h4><p>").Append(Text(text)).Append("</p></div>");
    }

    private static void Table(StringBuilder page, PaperBlock.Table table)
    {
        page.Append("<div class=\"scroll\" tabindex=\"0\"><table>");
        if (!table.Widths.IsDefaultOrEmpty)
        {
            page.Append("<colgroup>").AppendJoin("", table.Widths.Select(w => FormattableString.Invariant($"<col style=\"width:{100 * w / table.Widths.Sum():0}%\" />"))).Append("</colgroup>");
        }

        page.Append("<thead><tr>");
        foreach (string head in table.Heads)
        {
            page.Append("<th scope=\"col\">").Append(Text(head)).Append("</th>");
        }

        page.Append("</tr></thead><tbody>");
        foreach (var row in table.Rows)
        {
            page.Append(row.IsEmpty ? "<tr class=\"empty\">" : "<tr>");
            for (int i = 0; i < table.Heads.Length; i++)
            {
                string cell = row.IsEmpty ? "" : Text(row[i]);
                page.Append(table.RowHeads && i == 0 ? $"<th scope=\"row\">{cell}</th>" : $"<td>{cell}</td>");
            }

            page.Append("</tr>");
        }

        page.Append("</tbody></table></div>");
    }

    private static void Picture(StringBuilder page, PaperBlock.Picture picture)
    {
        string room = picture.Scale is { } scale ? FormattableString.Invariant($" style=\"max-width:{SvgPainter.SizeOf(picture.Svg).Width * scale:0.#}pt\"") : "";
        page.Append("<figure class=\"plate\"").Append(room).Append('>').Append(picture.Svg);
        page.Append(picture.Caption.Runs.IsEmpty ? "" : $"<figcaption class=\"cap\">{Text(picture.Caption)}</figcaption>").Append("</figure>");
    }

    private static void Code(StringBuilder page, PaperBlock.Code code)
    {
        string address = Text(code.Address);
        page.Append("<div class=\"code\">").Append(QrDrawing.Render(code.Address)).Append("<p class=\"small\">").Append(Text(code.Says)).Append("<br/><a href=\"").Append(address).Append("\">").Append(Text(code.Shown)).Append("</a></p></div>");
    }

    internal static string Text(PaperText text) => string.Concat(text.Runs.Select(r => r.Style switch
    {
        RunStyle.Strong => $"<b>{Text(r.Text)}</b>",
        RunStyle.Aside => $"<span class=\"answer\">{Text(r.Text)}</span>",
        _ => Text(r.Text),
    }));

    private static string Text(string text) => WebUtility.HtmlEncode(text);
}
