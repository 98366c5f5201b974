using System.Collections.Immutable;
using Sightglass.Drawing.Shapes;
using Sightglass.Drawing.Text;

namespace Sightglass.Drawing.Ladder;

/// <summary>
/// Lays a circuit out as rungs between two rails: the wire at which most parts meet above, the minus of the sources below. Pieces that hang together without the rails stand side by side, in rows that are
/// no wider than asked; every wire is a level bar, every part an upright line.
/// </summary>
internal sealed class LadderPlanner(LadderInput input, LadderOptions options)
{
    private const double Margin = 16;

    private readonly List<LadderBar> _bars = [];
    private readonly List<LadderRung> _rungs = [];
    private readonly List<(double X, double Y)> _dots = [];
    private readonly List<Bounds> _rows = [];
    private readonly Dictionary<string, LadderWire> _wires = input.Wires.ToDictionary(w => w.Id, StringComparer.Ordinal);

    /// <summary>From a part to the next: words of usual length are broken into lines, and no single one reaches the next part's symbol.</summary>
    private double Column { get; } = Math.Max(options.LabelSize * 9.2, LadderPen.WordsFrom + LadderPen.SymbolHalf + options.LabelSize + input.Parts.SelectMany(p => p.Label.Split(' ')).Select(w => TextMeasure.Width(w, TextFace.Sans500, options.LabelSize * LadderPen.WordSize)).DefaultIfEmpty(0).Max());

    private double Edge => options.LabelSize * 1.6;

    public LadderLayout Plan()
    {
        double y = Margin;
        if (input.Parts.Length > 0)
        {
            (string plus, string minus) = input.Rails;
            foreach (List<LadderBlock> row in Rows([.. Blocks(plus, minus)]))
            {
                y = Row(row, plus, minus, y) + (options.LabelSize * 2.2);
            }
        }

        double right = _bars.Select(b => b.Right).DefaultIfEmpty(Margin).Max();
        return new()
        {
            Input = input,
            Sheet = new(0, 0, right + Margin, Math.Max(y, Margin * 2)),
            Bars = [.. _bars],
            Rungs = [.. _rungs],
            Dots = [.. _dots],
            Rows = [.. _rows],
        };
    }

    private IEnumerable<LadderBlock> Blocks(string plus, string minus)
    {
        List<List<LadderPart>> blocks = [];
        Dictionary<string, List<LadderPart>> of = new(StringComparer.Ordinal);
        foreach (LadderPart part in input.Parts)
        {
            List<LadderPart> block = [part];
            foreach (string wire in new[] { part.Plus, part.Minus }.Where(w => w != plus && w != minus))
            {
                if (of.TryGetValue(wire, out List<LadderPart>? known) && known != block)
                {
                    // The earlier piece takes the later one in.
                    known.AddRange(block.Except(known));
                    blocks.Remove(block);
                    foreach (string own in of.Where(w => w.Value == block).Select(w => w.Key).ToList())
                    {
                        of[own] = known;
                    }

                    block = known;
                }

                of[wire] = block;
            }

            if (!blocks.Contains(block))
            {
                blocks.Add(block);
            }
        }

        return blocks.Select(b => new LadderBlock(plus, minus, [.. b.OrderBy(p => input.Parts.IndexOf(p))]).Lay()).OrderByDescending(b => b.Rungs.Any(r => r.Part.IsSource));
    }

    private List<List<LadderBlock>> Rows(LadderBlock[] blocks)
    {
        List<List<LadderBlock>> rows = [];
        int most = Math.Max(2, (int)((options.MostWide - (2 * Margin) - options.LabelSize) / Column));
        int taken = most;
        foreach (LadderBlock block in blocks)
        {
            if (taken + block.Columns > most)
            {
                rows.Add([]);
                taken = 0;
            }

            rows[^1].Add(block);
            taken += block.Columns;
        }

        return rows;
    }

    private double Row(List<LadderBlock> row, string plus, string minus, double top)
    {
        double upper = top + Edge;
        int levels = row.Max(b => b.Levels) + 1;
        // Together, a name of three lines still has room beside its part.
        double step = Math.Clamp((options.MostHigh - (2 * Edge)) / levels, options.LabelSize * 4, options.LabelSize * 6.8);
        double lower = upper + (levels * step);
        double x = Margin + (options.LabelSize * 1.2);
        double first = x;
        foreach (LadderBlock block in row)
        {
            Block(block, plus, minus, x, upper, lower, step);
            x += block.Columns * Column;
        }

        double right = x - Column + (options.LabelSize * 8.2);
        Bar(plus, first - (options.LabelSize * 1.2), right, upper, rail: true);
        Bar(minus, first - (options.LabelSize * 1.2), right, lower, rail: true);
        double bottom = lower + Edge;
        _rows.Add(new(0, top, right + Margin, bottom));
        return bottom;
    }

    private void Block(LadderBlock block, string plus, string minus, double x, double upper, double lower, double step)
    {
        double YOf(string wire) => wire == plus ? upper : wire == minus ? lower : upper + (block.LevelOf(wire) * step);
        foreach ((LadderPart part, int column, string up, string down) in block.Rungs)
        {
            double at = x + (column * Column);
            (double top, double bottom) = (YOf(up), YOf(down));
            ImmutableArray<string> words = [.. TextMeasure.Wrap(part.Label, TextFace.Sans500, options.LabelSize * LadderPen.WordSize, Column - (options.LabelSize * 3.9))];
            _rungs.Add(new(part, at, top, bottom, top + (step / 2), part.Plus != up, words));
            _dots.Add((at, top));
            _dots.Add((at, bottom));
        }

        foreach (string wire in block.Rungs.SelectMany(r => new[] { r.Upper, r.Lower }).Where(w => w != plus && w != minus).Distinct(StringComparer.Ordinal))
        {
            double[] ends = [.. block.Rungs.Where(r => r.Upper == wire || r.Lower == wire).Select(r => x + (r.Column * Column))];
            Bar(wire, ends.Min(), ends.Max(), YOf(wire), rail: false);
        }
    }

    private void Bar(string wire, double left, double right, double y, bool rail) => _bars.Add(new(_wires[wire], left, right, y) { IsRail = rail, Number = _bars.Count });
}
