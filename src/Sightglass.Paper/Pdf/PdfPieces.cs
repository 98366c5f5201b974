using System.Collections.Immutable;
using PdfSharp.Drawing;
using PdfSharp.UniversalAccessibility;
using Sightglass.Paper.Document;
using Sightglass.Paper.Vectors;
using Words = Sightglass.Basics.Language.Say;

namespace Sightglass.Paper.Pdf;

/// <summary>Turns blocks into pieces: measures them, and says how each is painted and marked.</summary>
internal sealed partial class PdfPieces(PdfPages pages, PdfType type, bool large)
{
    private const double Hair = 0.4;
    private static readonly XColor s_hair = XColor.FromArgb(0x8A, 0x8A, 0x8A);
    private const double Rule = 0.7;

    /// <summary>A paragraph of more lines is broken over pages.</summary>
    private const int WholeLines = 7;

    private bool Small => type.Small < 8;

    public IEnumerable<PdfPiece> Of(PaperBlock block, double width) => block switch
    {
        PaperBlock.Heading heading => Heading(heading, width),
        PaperBlock.Paragraph paragraph => Paragraph(paragraph, width),
        PaperBlock.Bullets bullets => List(bullets.Lines, width, ticks: false),
        PaperBlock.Ticks ticks => List(ticks.Lines, width, ticks: true),
        PaperBlock.Steps steps => Steps(steps, width),
        PaperBlock.Table table => Table(table, width),
        PaperBlock.Notice notice => [Notice(notice.Word, notice.Text, width) with { Space = type.Gap * 1.4, WithNext = true }],
        PaperBlock.Picture picture => Picture(picture, width),
        PaperBlock.Photos photos => Photos(photos, width),
        PaperBlock.Code code => [Code(code, width)],
        PaperBlock.Box box => [Box(box, width)],
        PaperBlock.Columns columns => Columns(columns, width),
        PaperBlock.PageBreak => [new PdfPiece(0, _ => { }) { NewPage = true, WithNext = true }],
        _ => throw new NotSupportedException($"No piece for {block.GetType().Name}."),
    };

    private IEnumerable<PdfPiece> Heading(PaperBlock.Heading heading, double width)
    {
        double size = heading.Level switch { 1 => type.Title, 2 => type.Section, _ => type.Part };
        PaperFace face = heading.Level == 2 ? PaperFace.Serif400 : PaperFace.Serif600;
        PdfBlockLevelElementTag tag = heading.Level switch { 1 => PdfBlockLevelElementTag.Heading1, 2 => PdfBlockLevelElementTag.Heading2, _ => PdfBlockLevelElementTag.Heading3 };
        double pill = heading.Number is { } n ? PdfFonts.Width(n, PaperFace.Sans600, type.Small) + (type.Small * 1.1) : 0;
        double before = heading.Number is null ? 0 : pill + (type.Small * 0.8);
        double aside = heading.Aside is { } a ? PdfFonts.Width(a, PaperFace.Sans400, type.Small) + type.Body : 0;
        aside = aside > width * 0.5 ? 0 : aside;
        ImmutableArray<ImmutableArray<PdfSegment>> lines = PdfLines.Break(heading.Text, face, size, width - before - aside);
        double text = lines.Length * size * 1.18;
        bool ruledOver = heading.Level == 2;
        bool ruledUnder = heading.Level == 3 || (heading.Level == 1 && Small);
        double over = ruledOver ? size * 0.55 : 0;
        double under = ruledUnder ? size * 0.32 : heading.Level == 1 ? size * 0.1 : 0;
        yield return new PdfPiece(over + text + under, into =>
        {
            double baseLine = into.Y + over + (size * 0.94);
            pages.Tags.Artifact(() =>
            {
                if (ruledOver && into.Y > pages.Frame.Top + 1)
                {
                    Line(into.X, into.Y, into.Right, Rule);
                }

                if (ruledUnder)
                {
                    Line(into.X, into.Bottom, into.Right, heading.Level == 1 ? 1.2 : Hair);
                }

                if (heading.Number is not null)
                {
                    pages.Page.DrawRoundedRectangle(XBrushes.Black, into.X, baseLine - (type.Small * 1.02), pill, type.Small * 1.36, type.Small, type.Small);
                }
            });
            pages.Tags.Words(tag, () =>
            {
                if (heading.Number is { } number)
                {
                    // The space keeps the number apart from the words for who reads them aloud.
                    Say(number + " ", into.X + (type.Small * 0.55), baseLine, PaperFace.Sans600, type.Small, XBrushes.White);
                }

                Say(lines, into.X + before, baseLine, size, size * 1.18);
                if (aside > 0)
                {
                    Say(" " + heading.Aside, into.Right - aside + type.Body - PdfFonts.Width(" ", PaperFace.Sans400, type.Small), baseLine, PaperFace.Sans400, type.Small);
                }
            });
            if (heading.Level < 3)
            {
                Outline(heading, into);
            }
        })
        {
            Space = heading.Level switch { 1 => type.Gap, 2 => type.Body * 2, _ => type.Body * 1.5 },
            WithNext = true,
        };
        yield return new PdfPiece(ruledUnder ? type.Gap * 0.5 : 0, _ => { }) { WithNext = true };
    }

    private IEnumerable<PdfPiece> Paragraph(PaperBlock.Paragraph paragraph, double width)
    {
        (PaperFace face, double size, double space) = paragraph.Sort switch
        {
            ParagraphSort.Eyebrow => (PaperFace.Sans600, type.Small, type.Gap),
            ParagraphSort.Lead => (PaperFace.Serif400, type.Lead, type.Gap),
            ParagraphSort.Small => (PaperFace.Sans400, type.Small, type.Gap * 0.5),
            ParagraphSort.Loud => (PaperFace.Sans700, type.Small * 1.08, type.Gap * 0.5),
            ParagraphSort.Head => (PaperFace.Serif400, type.Body, type.Gap * 0.35),
            _ => (PaperFace.Serif400, type.Body, type.Gap),
        };
        bool beside = paragraph.Tag is not null && width > 20 * type.Body;
        double margin = beside ? type.Body * 4.4 : 0;
        PaperText text = paragraph.Tag is { } word && !beside ? new([new PaperRun(word + ": ", RunStyle.Strong), .. paragraph.Text.Runs]) : paragraph.Text;
        ImmutableArray<ImmutableArray<PdfSegment>> lines = PdfLines.Break(text, face, size, width - margin);
        double step = size * (Small ? 1.28 : PdfType.Leading);
        int at = 0;
        bool whole = lines.Length <= WholeLines;
        if (!whole)
        {
            yield return new PdfPiece(0, _ => pages.Tags.Begin(PdfBlockLevelElementTag.Paragraph)) { WithNext = true };
        }

        while (at < lines.Length)
        {
            int from = at;
            // Two lines stay together at the start and at the end.
            int count = whole ? lines.Length : from == 0 || lines.Length - from <= 3 ? Math.Min(2 + (lines.Length - from == 3 ? 1 : 0), lines.Length - from) : 1;
            at += count;
            yield return new PdfPiece(count * step, into => Paint(paragraph, whole, from == 0 && beside, lines.Slice(from, count), into, margin, size, step))
            {
                Space = from == 0 ? space : 0,
                WithNext = paragraph.Sort is ParagraphSort.Eyebrow,
            };
        }

        if (!whole)
        {
            yield return new PdfPiece(0, _ => pages.Tags.End());
        }
    }

    private void Paint(PaperBlock.Paragraph paragraph, bool whole, bool tagged, ImmutableArray<ImmutableArray<PdfSegment>> lines, XRect into, double margin, double size, double step)
    {
        void Text()
        {
            if (tagged)
            {
                Say(paragraph.Tag + " ", into.X, into.Y + (size * 0.98), PaperFace.Sans600, type.Small);
            }

            Say(lines, into.X + margin, into.Y + (size * 0.98), size, step);
        }

        if (whole)
        {
            pages.Tags.Words(PdfBlockLevelElementTag.Paragraph, Text);
        }
        else
        {
            pages.Tags.More(Text);
        }
    }

    private IEnumerable<PdfPiece> Columns(PaperBlock.Columns columns, double width)
    {
        double gutter = type.Body * 2.4;
        double half = (width - gutter) / 2;
        PdfPiece[] left = [.. columns.Left.SelectMany(b => Of(b, half))];
        PdfPiece[] right = [.. columns.Right.SelectMany(b => Of(b, half))];
        double height = Math.Max(PdfFlow.Height(left), PdfFlow.Height(right));
        if (large || height > pages.Frame.Height * 0.7)
        {
            return columns.Left.Concat(columns.Right).SelectMany(b => Of(b, width));
        }

        return
        [
            new PdfPiece(height, into =>
            {
                PdfFlow.Stack(left, new XRect(into.X, into.Y, half, into.Height));
                PdfFlow.Stack(right, new XRect(into.X + half + gutter, into.Y, half, into.Height));
            })
            {
                Space = Math.Max(Space(left), Space(right)),
            },
        ];

        static double Space(PdfPiece[] pieces) => pieces.Length == 0 ? 0 : pieces[0].Space;
    }

    private PdfPiece Box(PaperBlock.Box box, double width)
    {
        double pad = type.Small * 0.8;
        PdfPiece[] inside = [.. box.Blocks.SelectMany(b => Of(b, width - (2 * pad)))];
        double height = PdfFlow.Height(inside) + (2 * pad);
        return new PdfPiece(height, into =>
        {
            pages.Tags.Artifact(() => pages.Page.DrawRectangle(new XPen(XColors.Black, Rule), into));
            pages.Tags.Begin(PdfGroupingElementTag.Division);
            PdfFlow.Stack(inside, new XRect(into.X + pad, into.Y + pad, into.Width - (2 * pad), into.Height));
            pages.Tags.End();
        })
        {
            Space = type.Gap * 1.6,
        };
    }

    private PdfPiece Code(PaperBlock.Code code, double width)
    {
        double side = PdfRoom.Mm(Small ? 20 : 24);
        double left = side + type.Body;
        ImmutableArray<ImmutableArray<PdfSegment>> says = PdfLines.Break(code.Says, PaperFace.Sans400, type.Small, width - left);
        ImmutableArray<string> address = PdfLines.Cut(code.Shown, PaperFace.Sans600, type.Small, width - left);
        double step = type.Small * 1.25;
        return new PdfPiece(Math.Max(side, (says.Length + address.Length + 1) * step), into =>
        {
            XRect square = new(into.X, into.Y, side, side);
            pages.Tags.Figure(Words.With($"Code for a phone: {code.Address}"), square, () => Squares(code.Address, square));
            pages.Tags.Words(PdfBlockLevelElementTag.Paragraph, () =>
            {
                double y = into.Y + (side * 0.2) + type.Small;
                Say(says, into.X + left, y, type.Small, step);
                for (int i = 0; i < address.Length; i++)
                {
                    Say(address[i], into.X + left, y + ((says.Length + i) * step), PaperFace.Sans600, type.Small);
                }
            });
        })
        {
            Space = type.Gap * 1.6,
        };
    }

    private void Squares(string address, XRect into)
    {
        bool[][] rows = QrDrawing.Modules(address);
        double module = into.Width / (rows.Length + (2 * QrDrawing.Quiet));
        foreach ((int x, int y, int wide) in QrDrawing.Runs(rows))
        {
            pages.Page.DrawRectangle(XBrushes.Black, into.X + (x * module), into.Y + (y * module), wide * module, module);
        }
    }

    private IEnumerable<PdfPiece> Picture(PaperBlock.Picture picture, double width)
    {
        (double w, double h) = SvgPainter.SizeOf(picture.Svg);
        double room = pages.Frame.Height * (picture.Scale is null ? picture.MostHeight : 1);
        double height = Math.Min(Math.Min(width, w * (picture.Scale ?? 1)) * h / w, room);
        double wide = height * w / h;
        pages.Drawn(wide / w * SvgPainter.LeastLetters(picture.Svg));
        yield return new PdfPiece(height, into =>
        {
            XRect box = new(into.X + ((into.Width - wide) / 2), into.Y, wide, height);
            pages.Tags.Figure(picture.Alt, box, () => SvgPainter.Paint(pages.Page, picture.Svg, box));
        })
        {
            Space = type.Body * 1.4,
            WithNext = !picture.Caption.Runs.IsEmpty,
        };
        if (!picture.Caption.Runs.IsEmpty)
        {
            double size = type.Caption;
            ImmutableArray<ImmutableArray<PdfSegment>> lines = PdfLines.Break(picture.Caption, PaperFace.SerifItalic400, size, width);
            yield return new PdfPiece(lines.Length * size * 1.25, into => pages.Tags.Words(PdfBlockLevelElementTag.Paragraph, () => Say(lines, into.X, into.Y + size, size, size * 1.25))) { Space = type.Gap * 0.6 };
        }
    }

    private void Outline(PaperBlock.Heading heading, XRect into)
    {
        if (!Small)
        {
            pages.Outline(heading.Text.Plain, heading.Level, into.Y);
        }
    }

    private void Line(double x, double y, double to, double weight) => pages.Page.DrawLine(new XPen(weight <= Hair ? s_hair : XColors.Black, weight), x, y, to, y);

    private void Say(string text, double x, double y, PaperFace face, double size, XBrush? ink = null) =>
        pages.Page.DrawString(PdfFonts.Drawn(text), PdfFonts.Font(face, size), ink ?? XBrushes.Black, x, y);

    private void Say(ImmutableArray<ImmutableArray<PdfSegment>> lines, double x, double y, double size, double step)
    {
        foreach (ImmutableArray<PdfSegment> line in lines)
        {
            foreach (PdfSegment segment in line)
            {
                Say(segment.Text, x + segment.X, y, segment.Face, size);
            }

            y += step;
        }
    }
}
