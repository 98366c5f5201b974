using System.Collections.Immutable;
using PdfSharp.Drawing;
using PdfSharp.UniversalAccessibility;
using Sightglass.Book.Model;
using Sightglass.Paper.Document;
using Words = Sightglass.Basics.Language.Say;

namespace Sightglass.Paper.Pdf;

/// <content>Lists, steps, tables, notices.</content>
internal sealed partial class PdfPieces
{
    private double Step => type.Body * (Small ? 1.26 : 1.32);

    private IEnumerable<PdfPiece> List(ImmutableArray<PaperText> texts, double width, bool ticks)
    {
        yield return Open(PdfBlockLevelElementTag.List);
        foreach (PaperText text in texts)
        {
            double indent = ticks ? type.Body * 1.7 : 0;
            yield return ListItem(ticks ? "☐" : "", text, width, indent, 0) with { Space = type.Gap * 0.4 };
        }

        yield return Close();
    }

    private IEnumerable<PdfPiece> Steps(PaperBlock.Steps steps, double width)
    {
        bool open = false;
        double indent = type.Body * 2.1;
        foreach (StepLine line in steps.Lines)
        {
            if (line is StepLine.Notice notice)
            {
                if (open)
                {
                    yield return Close();
                }

                open = false;
                yield return Notice(notice.Word, notice.Text, width) with { Space = type.Gap * 0.7, WithNext = true };
                continue;
            }

            if (!open)
            {
                yield return Open(PdfBlockLevelElementTag.List);
                open = true;
            }

            yield return line is StepLine.Step step ? ListItem(step.Label, step.Text, width, indent, 0) : ListItem("–", line.Text, width, indent + type.Body, indent);
        }

        if (open)
        {
            yield return Close();
        }
    }

    /// <param name="label">A number, a dash, a box to tick, or nothing.</param>
    /// <param name="indent">From the edge to the words.</param>
    /// <param name="labelAt">From the edge to the label.</param>
    private PdfPiece ListItem(string label, PaperText text, double width, double indent, double labelAt)
    {
        ImmutableArray<ImmutableArray<PdfSegment>> lines = PdfLines.Break(text, PaperFace.Serif400, type.Body, width - indent);
        double pad = type.Body * (Small ? 0.22 : 0.34);
        return new PdfPiece((lines.Length * Step) + (2 * pad), into =>
        {
            double y = into.Y + pad + (type.Body * 0.98);
            pages.Tags.Artifact(() =>
            {
                Line(into.X, into.Bottom, into.Right, Hair);
                if (label == "☐")
                {
                    pages.Page.DrawRectangle(new XPen(XColors.Black, Rule), into.X, y - (type.Body * 0.86), type.Body, type.Body);
                }
            });
            pages.Tags.Begin(PdfBlockLevelElementTag.ListItem);
            if (label is not ("" or "☐"))
            {
                pages.Tags.Words(PdfBlockLevelElementTag.Label, () => Say(label + " ", into.X + labelAt, y, label == "–" ? PaperFace.Serif400 : PaperFace.Sans600, label == "–" ? type.Body : Math.Max(type.Small, type.Body * 0.95)));
            }

            pages.Tags.Words(PdfBlockLevelElementTag.ListBody, () => Say(lines, into.X + indent, y, type.Body, Step));
            pages.Tags.End();
        });
    }

    private PdfPiece Notice(SignalWord word, PaperText text, double width)
    {
        double pad = type.Small * 0.7;
        double size = type.Small;
        string signal = Words.Word(word.ToString()).ToUpperInvariant();
        ImmutableArray<ImmutableArray<PdfSegment>> lines = PdfLines.Break(text, PaperFace.Sans400, size, width - (2 * pad));
        double head = size * 1.75;
        double step = size * 1.28;
        return new PdfPiece(head + (lines.Length * step) + (1.3 * pad), into =>
        {
            double triangle = word == SignalWord.Notice ? 0 : size * 1.5;
            pages.Tags.Artifact(() =>
            {
                pages.Page.DrawRectangle(new XPen(XColors.Black, 1.1), into);
                Line(into.X, into.Y + head, into.Right, 1.1);
                if (triangle > 0)
                {
                    Triangle(into.X + pad, into.Y + (head / 2), size * 1.1);
                }
            });
            pages.Tags.Begin(PdfGroupingElementTag.Division);
            pages.Tags.Words(PdfBlockLevelElementTag.Paragraph, () => Say(signal + " ", into.X + pad + triangle, into.Y + (head / 2) + (size * 0.35), PaperFace.Sans700, size * 1.02));
            pages.Tags.Words(PdfBlockLevelElementTag.Paragraph, () => Say(lines, into.X + pad, into.Y + head + (0.5 * pad) + size, size, step));
            pages.Tags.End();
        });
    }

    private void Triangle(double x, double y, double side)
    {
        pages.Page.DrawPolygon(XBrushes.Black, [new(x, y + (side * 0.46)), new(x + side, y + (side * 0.46)), new(x + (side / 2), y - (side * 0.46))], XFillMode.Winding);
        pages.Page.DrawRectangle(XBrushes.White, x + (side * 0.45), y - (side * 0.16), side * 0.1, side * 0.34);
        pages.Page.DrawRectangle(XBrushes.White, x + (side * 0.45), y + (side * 0.26), side * 0.1, side * 0.1);
    }

    private IEnumerable<PdfPiece> Table(PaperBlock.Table table, double width)
    {
        double gutter = type.Small;
        double[] shares = table.Widths.IsDefaultOrEmpty ? [.. table.Heads.Select(_ => 1.0)] : [.. table.Widths];
        double unit = (width - (gutter * (shares.Length - 1))) / shares.Sum();
        double[] widths = [.. shares.Select(s => s * unit)];
        double[] lefts = [.. widths.Select((_, i) => widths.Take(i).Sum() + (i * gutter))];
        var heads = table.Heads.Select((h, i) => PdfLines.Break(h, PaperFace.Sans600, type.Small, widths[i])).ToArray();
        double headHeight = (heads.Max(h => h.Length) * type.Small * 1.25) + (type.Small * 0.8);
        PdfPiece head = new(headHeight, into => Row(heads, lefts, into, _ => null, Rule))
        {
            WithNext = true,
            Space = type.Gap * 0.6,
        };
        yield return Open(PdfBlockLevelElementTag.Table);
        yield return head with { Paint = into => Row(heads, lefts, into, _ => true, Rule) };
        foreach (ImmutableArray<PaperText> row in table.Rows)
        {
            var cells = table.Heads.Select((_, i) => row.IsEmpty ? [] : PdfLines.Break(row[i], table.RowHeads && i == 0 ? PaperFace.Sans600 : PaperFace.Sans400, type.Small, widths[i])).ToArray();
            double height = row.IsEmpty ? type.Small * 2.6 : (cells.Max(c => c.Length) * type.Small * 1.25) + (type.Small * 0.8);
            yield return new PdfPiece(height, into => Row(cells, lefts, into, i => table.RowHeads && i == 0 ? false : null, Hair, tagged: true)) { Repeated = head };
        }

        yield return Close();
    }

    /// <summary>A row of cells; heads that are only repeated are no part of the structure.</summary>
    /// <param name="headOf">Of a cell: true the head of its column, false of its row, null neither.</param>
    private void Row(ImmutableArray<ImmutableArray<PdfSegment>>[] cells, double[] lefts, XRect into, Func<int, bool?> headOf, double rule, bool tagged = false)
    {
        double y = into.Y + (type.Small * 1.25);
        tagged |= headOf(0) is true;
        pages.Tags.Artifact(() => Line(into.X, into.Bottom, into.Right, rule));
        if (!tagged)
        {
            pages.Tags.Artifact(() => Cells(i => Say(cells[i], into.X + lefts[i], y, type.Small, type.Small * 1.25)));
            return;
        }

        pages.Tags.Begin(PdfBlockLevelElementTag.TableRow);
        Cells(i =>
        {
            void Text() => Say(cells[i], into.X + lefts[i], y, type.Small, type.Small * 1.25);
            if (headOf(i) is { } column)
            {
                pages.Tags.Head(column, Text);
            }
            else
            {
                pages.Tags.Words(PdfBlockLevelElementTag.TableDataCell, Text);
            }
        });
        pages.Tags.End();

        void Cells(Action<int> paint)
        {
            for (int i = 0; i < cells.Length; i++)
            {
                paint(i);
            }
        }
    }

    private PdfPiece Open(PdfBlockLevelElementTag tag) => new(0, _ => pages.Tags.Begin(tag)) { WithNext = true };

    private PdfPiece Close() => new(0, _ => pages.Tags.End());
}
