using Sightglass.Drawing.Shapes;
using M = Sightglass.Drawing.Diagram.DiagramMeasure;

namespace Sightglass.Drawing.Diagram;

internal sealed partial class DiagramPlanner
{
    // A tube, and its reading above it.
    private double GlassRoom => Math.Max(M.GlassRoom, _board.Width("0000") + 10 - (M.TankGap / 2));

    private void PlaceTank(DiagramTerminal tank)
    {
        List<DiagramChain> arriving = [.. tank.In.Where(c => c.Route == DiagramRoute.Run)];
        List<RunEnd> ends = [.. arriving.Select(PlaceRun)];
        List<(DiagramChain? Chain, double Width)> below = Below(tank, arriving);
        List<DiagramNode> taps = [.. Gauges.Where(g => g.Of.Contains(tank.Id))];
        List<DiagramNode> glasses = [.. _input.Nodes.Where(n => n.Role == DiagramRole.Glass && n.Of.Contains(tank.Id))];
        int right = (glasses.Count + 1) / 2;
        int left = glasses.Count / 2;
        List<DiagramChain> returns = [.. tank.In.Where(c => c.Route == DiagramRoute.Return)];
        List<DiagramChain> fills = [.. tank.In.Where(c => c.Route == DiagramRoute.Fill)];
        double above = returns.Sum(c => Slot(c, M.ReturnSlot)) + fills.Sum(c => Slot(c, M.FillSlot)) + (taps.Count * M.TapSlot) + (tank.Node.HasVent ? M.VentSlot : 0);
        double width = Math.Max(M.LeastTankWidth, Math.Max(above, below.Sum(b => b.Width)) + 16);
        width = Math.Max(width, _board.WidthOf(tank.Node.Label, "body-words") + 20);
        double x = _bodyEnd + (left * GlassRoom);
        double firstBelow = (width - below.Sum(b => b.Width)) / 2;
        if (ends.Count > 0)
        {
            x = Math.Max(x, ends.Max(e => e.X) + 10 - firstBelow - (M.SupplySlot / 2));
        }

        while (Enumerable.Range(0, ends.Count).Any(i => !_board.IsOpen(x + firstBelow + ((i + 0.5) * M.SupplySlot), M.TankHeight, x + firstBelow + ((i + 0.5) * M.SupplySlot), LaneY(ends[i].Lane) - 4)))
        {
            x += 8;
        }

        DiagramBody body = new(tank.Node, new Bounds(x, 0, x + width, M.TankHeight)) { Vent = tank.Node.HasVent ? x + width - 16 : null };
        _board.Bodies.Add(body);
        _bodies[tank] = body;
        Top(tank, x, returns, fills, taps);
        Bottom(tank, x + firstBelow, below);
        for (int i = 0; i < arriving.Count; i++)
        {
            double slot = _slots[arriving[i]];
            EndRun(arriving[i], ends[i], [(slot, LaneY(ends[i].Lane)), (slot, M.TankHeight)]);
        }

        for (int i = 0; i < glasses.Count; i++)
        {
            Glass(glasses[i], body, i);
        }

        _bodyEnd = x + width + (right * GlassRoom) + M.TankGap;
    }

    private List<(DiagramChain? Chain, double Width)> Below(DiagramTerminal tank, List<DiagramChain> arriving) =>
    [
        .. arriving.Select(c => ((DiagramChain?)c, M.SupplySlot)),
        .. tank.Out.Concat(tank.In).Where(c => c.Route == DiagramRoute.Supply).Distinct().Select(c => ((DiagramChain?)c, Slot(c, M.SupplySlot))),
        .. tank.Out.Where(c => c.Route == DiagramRoute.Run).Select(c => ((DiagramChain?)c, M.SupplySlot)),
        .. tank.Out.Where(c => c.Route == DiagramRoute.Drain).Select(c => ((DiagramChain?)c, Slot(c, M.DrainSlot) + Beside(c))),
    ];

    // From a name to the next symbol.
    private const double Apart = 10;

    // Room for names to the right of a drain, where its row has no name in common.
    private double Beside(DiagramChain chain)
    {
        DiagramLink[] firsts = [.. _graph.Chains.Where(c => c.Route == DiagramRoute.Drain && c.Links.Count > 0).Select(c => c.Links[0])];
        bool alike = firsts.Length > 1 && firsts.Select(l => l.Path.Kind).Distinct(StringComparer.Ordinal).Count() == 1;
        return alike ? 0 : chain.Links.Select(l => _board.Width(l.Path.Label) + Apart).DefaultIfEmpty(0).Max();
    }

    // Room for a vertical pipe: the usual, or more for wide symbols.
    private static double Slot(DiagramChain chain, double usual) =>
        Math.Max(usual, chain.Links.Select(l => (2 * DiagramPart.SizeOf(l.Path.Symbol).Across) + 12).DefaultIfEmpty(0).Max());

    private void Top(DiagramTerminal tank, double left, List<DiagramChain> returns, List<DiagramChain> fills, List<DiagramNode> taps)
    {
        double x = left + 8;
        foreach (DiagramChain chain in returns)
        {
            _slots[chain] = x + (Slot(chain, M.ReturnSlot) / 2) - 4;
            x += Slot(chain, M.ReturnSlot);
        }

        foreach (DiagramChain chain in fills)
        {
            DrawFill(chain, x + (Slot(chain, M.FillSlot) / 2));
            x += Slot(chain, M.FillSlot);
        }

        foreach (DiagramNode gauge in taps)
        {
            _taps[(tank.Id, gauge.Id)] = x + (M.TapSlot / 2);
            x += M.TapSlot;
        }
    }

    private void Bottom(DiagramTerminal tank, double left, List<(DiagramChain? Chain, double Width)> below)
    {
        double x = left;
        foreach ((DiagramChain? chain, double width) in below)
        {
            double middle = x + ((chain!.Route == DiagramRoute.Drain ? Slot(chain, M.DrainSlot) : width) / 2);
            _slots[chain] = middle;
            if (chain.Route == DiagramRoute.Drain)
            {
                DrawDrain(chain, middle);
            }
            else
            {
                _elementsFrom = Math.Max(_elementsFrom, middle + 30);
            }

            x += width;
        }
    }

    private void DrawFill(DiagramChain chain, double x)
    {
        double top = Upright(chain, x, _rows.Fill);
        _board.Pipe(Name(chain), [(x, top - 8), (x, 0)], Terms(chain));
        Open(chain, new DiagramOpenEnd(x, top - 7, true));
    }

    private void DrawDrain(DiagramChain chain, double x)
    {
        double end = Upright(chain, x, _rows.Drain) + 7;
        _board.Pipe(Name(chain), [(x, M.TankHeight), (x, end)], Terms(chain));
        Open(chain, new DiagramOpenEnd(x, end + 6, true));
    }

    // Symbols of a vertical pipe in their rows; returns the outer edge of the last.
    private double Upright(DiagramChain chain, double x, double[] rows)
    {
        bool below = chain.Route is DiagramRoute.Drain or DiagramRoute.Supply;
        bool down = chain.Route != DiagramRoute.Supply || chain.From is { IsTank: true };
        double edge = below ? M.TankHeight : 0;
        List<DiagramLink> links = [.. DiagramRows.FromTank(chain)];
        for (int i = 0; i < links.Count; i++)
        {
            _board.Part(links[i].Path, x, rows[i], down == links[i].Reversed ? 270 : 90);
            edge = rows[i] + ((below ? 1 : -1) * DiagramPart.SizeOf(links[i].Path.Symbol).Along);
        }

        bool forward = links.Count == 0 || links[0] == chain.Links[0];
        InnerLines(chain, gap =>
        {
            int i = forward ? gap : chain.Links.Count - gap;
            return (x, i == 0 ? (below ? M.TankHeight : 0) : i == rows.Length ? edge : i == links.Count ? edge : (rows[i - 1] + rows[i]) / 2);
        });
        return edge;
    }

    // Right wall first, then left, then right again outside of it.
    private void Glass(DiagramNode glass, DiagramBody body, int index)
    {
        bool left = index % 2 == 1;
        double away = 8 + (index / 2 * GlassRoom);
        double wall = left ? body.Box.Left : body.Box.Right;
        double x = left ? wall - away - 12 : wall + away;
        _board.Glasses.Add(new DiagramGlass(glass, body.Node, left, x, wall, 8, M.TankHeight - 16));
    }

    private void DrawSupply(DiagramChain chain, DiagramNet net)
    {
        double x = _slots[chain];
        bool down = chain.From is { IsTank: true };
        Upright(chain, x, _rows.Supply);
        (double, double)[] points = [(x, M.TankHeight), (x, net.Y)];
        List<(string, int)> terms = Terms(chain);
        _board.Pipe(Name(chain), down ? points : points.Reverse(), terms);
        net.Join(x, down ? terms : Against(terms));
    }

    private void InnerLines(DiagramChain chain, Func<int, (double X, double Y)> at)
    {
        foreach (DiagramInnerLine line in chain.Lines)
        {
            _board.LinePoints[line.Id] = at(line.Gap);
        }
    }
}
