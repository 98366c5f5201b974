using Sightglass.Drawing.Shapes;
using M = Sightglass.Drawing.Diagram.DiagramMeasure;

namespace Sightglass.Drawing.Diagram;

internal sealed partial class DiagramPlanner
{
    private void Words()
    {
        foreach (DiagramBody tank in _bodies.Values.Where(b => b.Node.Role == DiagramRole.Tank))
        {
            _board.Label(tank.Node.Label, "body-words", tank.Box.Left + 8, 8 + (_board.LabelSize * 1.4), "start");
        }

        RowWords(DiagramRoute.Return, _rows.Return);
        RowWords(DiagramRoute.Fill, _rows.Fill);
        RowWords(DiagramRoute.Drain, _rows.Drain);
        RowWords(DiagramRoute.Supply, _rows.Supply);
        foreach (DiagramNet net in _nets.Values.Where(n => n.Joints.Count > 0 && n.Terminal.Node.Label.Length > 0))
        {
            LineWords(net);
        }
    }

    // One caption at the left end for a row of like parts; unlike parts are named one by one.
    private void RowWords(DiagramRoute route, double[] rows)
    {
        List<(DiagramChain Chain, DiagramNode Node, double Y)> parts =
        [
            .. _graph.Chains.Where(c => c.Route == route).SelectMany(c => DiagramRows.FromTank(c).Select((l, i) => (c, l.Path, rows[i]))),
        ];
        foreach (IGrouping<double, (DiagramChain Chain, DiagramNode Node, double Y)> row in parts.GroupBy(p => p.Y))
        {
            List<(DiagramNode Node, DiagramNode Tank)> named = [.. row.Select(p => (p.Node, (p.Chain.From is { IsTank: true } ? p.Chain.From : p.Chain.To!).Node))];
            double left = row.Min(p => _board.Parts.Where(q => q.Node.Id == p.Node.Id).Min(q => q.Box.Left));
            if (named.Count == 1 && Beside(_board.Parts.First(p => p.Node.Id == named[0].Node.Id)))
            {
                continue;
            }

            if (RowCaption.Of(named) is { } caption)
            {
                Caption(caption, Math.Min(left, _board.Glasses.Select(g => DiagramBoard.GlassBox(g).Left).Concat(_bodies.Values.Select(b => b.Box.Left - 4)).Min()) - 10, row.Key);
            }
            else
            {
                foreach ((DiagramChain _, DiagramNode node, double y) in row)
                {
                    Beside(_board.Parts.First(p => p.Node.Id == node.Id));
                }
            }
        }
    }

    // At the left end of its row, farther left where something stands there.
    private void Caption(string text, double right, double row)
    {
        double y = row + (_board.LabelSize * 0.35);
        double width = _board.WidthOf(text, "row-words");
        while (!_board.IsFree(new Bounds(right - width, y - _board.LabelSize, right, y + 4), 2))
        {
            right -= 8;
        }

        _board.Label(text, "row-words", right, y, "end");
    }

    // Right of the symbol, else left, else smaller words: what does not fit is left to the title.
    private bool Beside(DiagramPart part)
    {
        double y = part.Y + (_board.LabelSize * 0.35);
        foreach ((double x, string anchor) in new[] { (part.Box.Right + 8, "start"), (part.Box.Left - 8, "end") })
        {
            double width = _board.Width(part.Node.Label);
            Bounds box = new(anchor == "start" ? x : x - width, y - 11, anchor == "start" ? x + width : x, y + 4);
            if (_board.IsFree(box, 2) && _board.IsClearOfPipes(box))
            {
                _board.Label(part.Node.Label, "d-lab", x, y, anchor);
                return true;
            }
        }

        return false;
    }

    private void LineWords(DiagramNet net)
    {
        string text = net.Terminal.Node.Label;
        double width = _board.WidthOf(text, "line-words");
        double below = net.Y + _board.LineHeight + 4;
        double above = net.Y - 8;
        (double X, double Y)[] spots = net.Terminal.IsReturn
            ? [(net.Right - width - 10, below), (net.Right - width - 10, above), (net.Left + 10, above)]
            : [(net.Left, below), (net.Left + 10, above), (net.Right - width - 8, above), (net.Right + 8, below), (net.Right - width - 8, below)];
        foreach ((double x, double y) in spots)
        {
            Bounds box = new(x, y - 11, x + width, y + 4);
            if (_board.IsFree(box, 2) && _board.IsClearOfPipes(box))
            {
                _board.Label(text, "line-words", x, y, "start");
                return;
            }
        }
    }
}
