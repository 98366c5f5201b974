using System.Collections.Immutable;
using Sightglass.Drawing.Shapes;
using Sightglass.Drawing.Text;
using M = Sightglass.Drawing.Diagram.DiagramMeasure;

namespace Sightglass.Drawing.Diagram;

internal sealed partial class DiagramPlanner
{
    private const double RingRadius = 11;
    private const double ControlHalf = 8;

    private double ControlPitch => Math.Max(21, _board.LineHeight + 2);

    private List<DiagramNode> Controls(DiagramNode node) =>
        [.. _input.Nodes.Where(n => n.Role == DiagramRole.Control && n.Of.Contains(node.Id)).OrderBy(n => n.Label.Length).ThenBy(n => n.Id, StringComparer.Ordinal)];

    // The first control is named in full, the others by what differs.
    private static List<string> ControlWords(List<DiagramNode> controls)
    {
        List<string> words = [];
        foreach (DiagramNode control in controls)
        {
            string first = controls[0].Label;
            bool same = words.Count > 0 && control.Label.StartsWith(first + ",", StringComparison.Ordinal);
            words.Add(same ? control.Label[(first.Length + 1)..].Trim() : control.Label);
        }

        return words;
    }

    private void Instruments()
    {
        // From the right, so that the words of one do not stand in the way down from the next.
        foreach (DiagramPart part in _board.Parts.OrderByDescending(p => p.X).ToList())
        {
            HangControls(part);
        }

        List<DiagramNode> boxes = [.. Gauges.Where(g => g.Of.Any(o => _taps.ContainsKey((o, g.Id))))];
        foreach (DiagramNode gauge in Gauges.Except(boxes))
        {
            Ring(gauge);
        }

        Boxes(boxes);
    }

    private void HangControls(DiagramPart part)
    {
        List<DiagramNode> controls = Controls(part.Node);
        if (controls.Count == 0)
        {
            return;
        }

        List<string> words = ControlWords(controls);
        bool run = part.Turn % 180 == 0;
        double x = part.X;
        double y = part.Y + (run && part.Turn == 0 ? DiagramPart.Below(part.Node.Symbol) : part.Half.Across) + (run ? (Wrapped(part.Node.Label).Count * _board.LineHeight) + 24 : 30);
        double width = words.Max(w => _board.Width(w)) + 24;
        Bounds room = new(x - ControlHalf, y - ControlHalf, x + width, y + ((controls.Count - 1) * ControlPitch) + ControlHalf);
        while (!_board.IsFree(room, 3) || (!run && !_board.IsClearOfPipes(room)))
        {
            double step = run ? 0 : 12;
            room = new Bounds(room.Left + step, room.Low + 12, room.Right + step, room.High + 12);
        }

        x = room.Left + ControlHalf;
        y = room.Low + ControlHalf;
        double from = part.Turn == 0 ? part.Y + DiagramPart.Below(part.Node.Symbol) : part.Box.High;
        for (int i = 0; i < controls.Count; i++)
        {
            Bounds box = new(x - ControlHalf, y - ControlHalf, x + ControlHalf, y + ControlHalf);
            ImmutableArray<(double, double)> line = i > 0 ? [(x, y - ControlPitch + ControlHalf), (x, y - ControlHalf)]
                : run ? [(x, from), (x, y - ControlHalf)] : [(part.X, from), (part.X, y), (x - ControlHalf, y)];
            _board.Instruments.Add(new DiagramInstrument(controls[i], box, [line], false));
            _board.Label(words[i], "d-lab", x + ControlHalf + 6, y + (_board.LabelSize * 0.35), "start");
            y += ControlPitch;
        }
    }

    // A gauge on lines: a ring below its taps, or above them where there is no room, its words to the right.
    private void Ring(DiagramNode gauge)
    {
        List<(double X, double Y)> taps = [.. gauge.Of.Where(_board.LinePoints.ContainsKey).Select(o => _board.LinePoints[o]).OrderBy(p => p.X)];
        if (taps.Count == 0)
        {
            return;
        }

        double width = Math.Max(_board.Width(gauge.Label), _board.Width("000.0 psi", true)) + 8;
        (double x, double y, List<ImmutableArray<(double X, double Y)>> lines) = RingSpot(taps, width);
        _board.Instruments.Add(new DiagramInstrument(gauge, new Bounds(x - RingRadius, y - RingRadius, x + RingRadius, y + RingRadius), [.. lines], true));
        _board.Label(gauge.Label, "d-lab", x + RingRadius + 6, y - 1, "start");
        _board.Reserve(x + RingRadius + 6, y - 1 + _board.LineHeight, width - 6, 1);
    }

    // The nearest spot where neither the ring nor its dashed lines touch anything, rather within what is drawn already than beside it;
    // failing that, far enough below everything.
    private (double X, double Y, List<ImmutableArray<(double X, double Y)>> Lines) RingSpot(List<(double X, double Y)> taps, double width)
    {
        double edge = taps.Max(t => t.Y);
        double limit = _board.Solid().Select(b => b.Right).Concat(_board.Pipes.SelectMany(p => p.Points).Concat(taps).Select(p => p.X)).Max() + RingRadius;
        double inside = limit - RingRadius - width;
        foreach ((double farthest, double right) in new[] { (150.0, limit), (600.0, double.PositiveInfinity) })
        {
            for (double away = 50; away < farthest; away += 6)
            {
                foreach ((double x, int way) in new[] { (taps[0].X, 1), (taps[^1].X, 1), (taps[0].X, -1), (taps[^1].X, -1), (inside, 1) })
                {
                    double y = edge + (away * way);
                    Bounds room = new(x - RingRadius, y - RingRadius - 3, x + RingRadius + width, y + _board.LineHeight);
                    List<ImmutableArray<(double X, double Y)>> lines = RingLines(taps, x, y - (RingRadius * way), way);
                    if (room.Right <= right && _board.IsFree(room) && _board.IsClearOfPipes(room) && lines.All(IsOpenWay))
                    {
                        return (x, y, lines);
                    }
                }
            }
        }

        double bottom = _board.Solid().Select(b => b.High).Append(edge).Max() + 30;
        return (taps[0].X, bottom, RingLines(taps, taps[0].X, bottom - RingRadius, 1));
    }

    private List<ImmutableArray<(double X, double Y)>> RingLines(List<(double X, double Y)> taps, double x, double edge, int way)
    {
        double bend = edge - (way > 0 ? 8 : -_board.LineHeight);
        return [.. taps.Select(t => t.X == x ? ImmutableArray.Create(t, (x, edge)) : [t, (t.X, bend), (x, bend)])];
    }

    private bool IsOpenWay(ImmutableArray<(double X, double Y)> line) => line.Zip(line.Skip(1)).All(s => _board.IsFree(
        new Bounds(Math.Min(s.First.X, s.Second.X), Math.Min(s.First.Y, s.Second.Y), Math.Max(s.First.X, s.Second.X), Math.Max(s.First.Y, s.Second.Y)), 2));

    // Gauges of tanks: boxes above everything at the right, dashed lines up from the tanks.
    private void Boxes(List<DiagramNode> gauges)
    {
        double right = Math.Max(_bodyEnd - M.TankGap, _board.Solid().Select(b => b.Right).DefaultIfEmpty(0).Max());
        IEnumerable<double> tops = _board.Solid().Select(b => b.Low).Concat(_board.Bodies.Where(b => b.Vent is not null).Select(b => b.Box.Low - 28)).Concat(_board.Pipes.SelectMany(p => p.Points).Select(p => p.Y));
        double y = tops.DefaultIfEmpty(0).Min() - 14;
        double Wide(DiagramNode g) => Math.Max(160, Math.Max(_board.Width(g.Label, true) + _board.Width("000.0 psi", true) + 34, Formula(g).Max(l => _board.Width(l)) + 22));
        double width = gauges.Select(Wide).DefaultIfEmpty(0).Max();
        foreach (DiagramNode gauge in gauges.OrderByDescending(g => g.Of.Length).ThenBy(g => g.Id, StringComparer.Ordinal))
        {
            IReadOnlyList<string> formula = Formula(gauge);
            double height = ((formula.Count + 1) * _board.LineHeight) + 10;
            Bounds box = new(right - width, y - height, right, y);
            double middle = (box.Low + box.High) / 2;
            List<(double X, double Y)> taps =
            [
                .. gauge.Of.Where(o => _taps.ContainsKey((o, gauge.Id))).Select(o => (_taps[(o, gauge.Id)], 0.0)),
                .. gauge.Of.Where(_board.LinePoints.ContainsKey).Select(o => _board.LinePoints[o]),
            ];
            (double X, double Y) first = taps.MinBy(t => t.X);
            List<ImmutableArray<(double, double)>> lines = [[first, (first.X, middle), (box.Left, middle)]];
            lines.AddRange(taps.Where(t => t != first).Select(t => ImmutableArray.Create(t, (t.X, middle))));
            _board.Instruments.Add(new DiagramInstrument(gauge, box, [.. lines], false));
            y -= height + 10;
        }
    }

    internal static IReadOnlyList<string> Formula(DiagramNode gauge, double labelSize) =>
        TextMeasure.Wrap(gauge.Detail.Replace(" / ", " ÷ ", StringComparison.Ordinal).Replace(" * ", " × ", StringComparison.Ordinal), TextFace.Sans500, labelSize, labelSize * 24);

    private IReadOnlyList<string> Formula(DiagramNode gauge) => Formula(gauge, _board.LabelSize);
}
