using Sightglass.Drawing.Shapes;
using M = Sightglass.Drawing.Diagram.DiagramMeasure;

namespace Sightglass.Drawing.Diagram;

internal sealed partial class DiagramPlanner
{
    // Chains that fit nowhere: their symbols stand in a row below everything, and a search finds the way for the pipes.
    private void PlaceLoops()
    {
        foreach (DiagramChain chain in _graph.Chains.Where(c => c.Route == DiagramRoute.Loop).ToList())
        {
            double bottom = _board.Solid().Select(b => b.High).Append(LaneY(_laneEnds.Count - 1)).Max();
            double y = bottom + 64;
            double left = _board.Solid().Select(b => b.Left).DefaultIfEmpty(0).Min();
            double right = _board.Solid().Select(b => b.Right).DefaultIfEmpty(0).Max();
            double width = chain.Links.Sum(l => Cell(l.Path).Before + Cell(l.Path).Behind);
            double x = ((left + right) / 2) - (width / 2);
            double start = x;
            List<double> gaps = [x];
            foreach (DiagramLink link in chain.Links)
            {
                (double before, double behind) = Cell(link.Path);
                _board.Part(link.Path, x + before, y, link.Reversed ? 180 : 0);
                RunWords(link.Path, x + before, y);
                x += before + behind;
                gaps.Add(x);
            }

            InnerLines(chain, i => (gaps[i], y));
            List<(double X, double Y)> first = Lead(chain.From, (start, y), Terms(chain), outward: true);
            List<(double X, double Y)> last = Lead(chain.To, (x, y), Terms(chain), outward: false);
            _board.Pipe(Name(chain), [.. first, (start, y), (x, y), .. Enumerable.Reverse(last)], Terms(chain));
        }
    }

    // Corners from a terminal to a point beside the first or last symbol.
    private List<(double X, double Y)> Lead(DiagramTerminal? terminal, (double X, double Y) to, List<(string Node, int Sign)> terms, bool outward)
    {
        if (terminal is null)
        {
            (double X, double Y) open = (to.X + (outward ? -18 : 18), to.Y);
            _board.OpenEnds.Add(new DiagramOpenEnd(open.X, open.Y + 6, true));
            return [open];
        }

        List<(double X, double Y)> starts = Starts(terminal);
        List<(double X, double Y)> way = new DiagramWay(_board).Find(starts, to);
        if (terminal.IsNet)
        {
            _nets[terminal].Join(way[0].X, outward ? Against(terms) : terms);
        }

        return way;
    }

    private List<(double X, double Y)> Starts(DiagramTerminal terminal)
    {
        if (_bodies.TryGetValue(terminal, out DiagramBody? body))
        {
            List<(double X, double Y)> edge = [];
            for (double x = body.Box.Left + 14; x <= body.Box.Right - 14; x += 16)
            {
                edge.Add((x, body.Box.High));
            }

            bool Clear((double X, double Y) p)
            {
                Bounds below = new(p.X - 7, p.Y + 6, p.X + 7, p.Y + 40);
                return _board.IsFree(below, 2) && _board.IsClearOfPipes(below, 0);
            }

            return [.. edge.Where(Clear).DefaultIfEmpty((body.Box.Left + 6, body.Box.High))];
        }

        DiagramNet net = _nets[terminal];
        if (net.Joints.Count == 0)
        {
            double bottom = _board.Solid().Select(b => b.High).Append(_rows.Lane).Max();
            net.Y = bottom + 28;
            net.Join(_board.Solid().Select(b => b.Left).DefaultIfEmpty(0).Min(), []);
        }

        return [.. net.Joints.Select(j => (j.X, net.Y)).Distinct()];
    }
}
