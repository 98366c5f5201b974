using Sightglass.Drawing.Shapes;
using M = Sightglass.Drawing.Diagram.DiagramMeasure;

namespace Sightglass.Drawing.Diagram;

internal sealed partial class DiagramPlanner
{
    private void Words()
    {
        foreach (DiagramBody tank in _bodies.Values.Where(b => b.Node.Role == DiagramRole.Tank))
        {
            _board.Labels.Add(new DiagramLabel(tank.Node.Label, "body-words", tank.Box.Left + 8, 26, "start", new Bounds(tank.Box.Left + 8, 6, tank.Box.Left + 8 + _board.WidthOf(tank.Node.Label, "body-words"), 30)));
        }

        RowWords(DiagramRoute.Return, (_, i) => _returnRow - (i * M.RowPitch));
        RowWords(DiagramRoute.Fill, (_, i) => _fillRow - (i * 26));
        RowWords(DiagramRoute.Drain, (_, i) => M.TankHeight + 16 + (i * 40));
        RowWords(DiagramRoute.Supply, (_, i) => _supplyRow + (i * M.RowPitch));
        foreach (DiagramNet net in _nets.Values.Where(n => n.Joints.Count > 0 && n.Terminal.Node.Label.Length > 0))
        {
            LineWords(net);
        }
    }

    // One caption at the left end for a row of like parts; unlike parts are named one by one.
    private void RowWords(DiagramRoute route, Func<DiagramChain, int, double> rowOf)
    {
        List<(DiagramChain Chain, DiagramNode Node, double Y)> parts =
        [
            .. _graph.Chains.Where(c => c.Route == route).SelectMany(c => Row(c, route).Select((n, i) => (c, n, rowOf(c, i)))),
        ];
        foreach (IGrouping<double, (DiagramChain Chain, DiagramNode Node, double Y)> row in parts.GroupBy(p => p.Y))
        {
            List<(DiagramNode Node, DiagramNode Tank)> named = [.. row.Select(p => (p.Node, (p.Chain.From is { IsTank: true } ? p.Chain.From : p.Chain.To!).Node))];
            double left = row.Min(p => _board.Parts.Where(q => q.Node.Id == p.Node.Id).Min(q => q.Box.Left));
            if (RowCaption.Of(named) is { } caption)
            {
                _board.Label(caption, "row-words", Math.Min(left, _board.Glasses.Select(g => DiagramBoard.GlassBox(g).Left).Concat(_bodies.Values.Select(b => b.Box.Left - 4)).Min()) - 10, row.Key + (_board.LabelSize * 0.35), "end");
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

    private static IEnumerable<DiagramNode> Row(DiagramChain chain, DiagramRoute route)
    {
        bool fromTank = route is DiagramRoute.Drain || (route == DiagramRoute.Supply && chain.From is { IsTank: true });
        return fromTank ? chain.Links.Select(l => l.Path) : Enumerable.Reverse(chain.Links).Select(l => l.Path);
    }

    // Right of the symbol, else left, else smaller words: what does not fit is left to the title.
    private void Beside(DiagramPart part)
    {
        double y = part.Y + (_board.LabelSize * 0.35);
        foreach ((double x, string anchor) in new[] { (part.Box.Right + 8, "start"), (part.Box.Left - 8, "end") })
        {
            double width = _board.Width(part.Node.Label);
            Bounds box = new(anchor == "start" ? x : x - width, y - 11, anchor == "start" ? x + width : x, y + 4);
            if (_board.IsFree(box, 2) && _board.IsClearOfPipes(box))
            {
                _board.Label(part.Node.Label, "d-lab", x, y, anchor);
                return;
            }
        }
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
