using Sightglass.Drawing.Shapes;
using M = Sightglass.Drawing.Diagram.DiagramMeasure;

namespace Sightglass.Drawing.Diagram;

internal sealed partial class DiagramPlanner
{
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
        double above = (returns.Count * M.ReturnSlot) + (fills.Count * M.FillSlot) + (taps.Count * M.TapSlot) + (tank.Node.HasVent ? M.VentSlot : 0);
        double width = Math.Max(M.LeastTankWidth, Math.Max(above, below.Sum(b => b.Width)) + 16);
        width = Math.Max(width, _board.WidthOf(tank.Node.Label, "body-words") + 20);
        double x = _bodyEnd + (left * M.GlassRoom);
        double firstBelow = (width - below.Sum(b => b.Width)) / 2;
        if (ends.Count > 0)
        {
            x = Math.Max(x, ends.Max(e => e.X) + 10 - firstBelow - (M.SupplySlot / 2));
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

        _bodyEnd = x + width + (right * M.GlassRoom) + M.TankGap;
    }

    private static List<(DiagramChain? Chain, double Width)> Below(DiagramTerminal tank, List<DiagramChain> arriving) =>
    [
        .. arriving.Select(c => ((DiagramChain?)c, M.SupplySlot)),
        .. tank.Out.Concat(tank.In).Where(c => c.Route == DiagramRoute.Supply).Distinct().Select(c => ((DiagramChain?)c, M.SupplySlot)),
        .. tank.Out.Where(c => c.Route == DiagramRoute.Run).Select(c => ((DiagramChain?)c, M.SupplySlot)),
        .. tank.Out.Where(c => c.Route == DiagramRoute.Drain).Select(c => ((DiagramChain?)c, M.DrainSlot)),
    ];

    private void Top(DiagramTerminal tank, double left, List<DiagramChain> returns, List<DiagramChain> fills, List<DiagramNode> taps)
    {
        double x = left + 8;
        foreach (DiagramChain chain in returns)
        {
            _slots[chain] = x + (M.ReturnSlot / 2) - 4;
            x += M.ReturnSlot;
        }

        foreach (DiagramChain chain in fills)
        {
            DrawFill(chain, x + (M.FillSlot / 2));
            x += M.FillSlot;
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
            double middle = x + (width / 2);
            _slots[chain!] = middle;
            if (chain!.Route == DiagramRoute.Drain)
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
        double y = _fillRow;
        foreach (DiagramLink link in Enumerable.Reverse(chain.Links))
        {
            _board.Part(link.Path, x, y, link.Reversed ? 270 : 90);
            y -= 26;
        }

        _board.Pipe(Name(chain), [(x, y + 2), (x, 0)], Terms(chain));
        _board.OpenEnds.Add(new DiagramOpenEnd(x, y + 4, true));
    }

    private void DrawDrain(DiagramChain chain, double x)
    {
        double y = M.TankHeight + 16;
        foreach (DiagramLink link in chain.Links)
        {
            _board.Part(link.Path, x, y, link.Reversed ? 270 : 90);
            y += 40;
        }

        double end = y - 40 + 16;
        _board.Pipe(Name(chain), [(x, M.TankHeight), (x, end)], Terms(chain));
        _board.OpenEnds.Add(new DiagramOpenEnd(x, end + 6, true));
    }

    // Right wall first, then left, then right again outside of it.
    private void Glass(DiagramNode glass, DiagramBody body, int index)
    {
        bool left = index % 2 == 1;
        double away = 8 + (index / 2 * M.GlassRoom);
        double wall = left ? body.Box.Left : body.Box.Right;
        double x = left ? wall - away - 12 : wall + away;
        _board.Glasses.Add(new DiagramGlass(glass, body.Node, left, x, wall, 8, M.TankHeight - 16));
    }

    private void DrawSupply(DiagramChain chain, DiagramNet net)
    {
        double x = _slots[chain];
        bool down = chain.From is { IsTank: true };
        List<DiagramLink> links = down ? chain.Links : [.. Enumerable.Reverse(chain.Links)];
        double y = _supplyRow;
        foreach (DiagramLink link in links)
        {
            _board.Part(link.Path, x, y, down == link.Reversed ? 270 : 90);
            y += M.RowPitch;
        }

        InnerLines(chain, i => (x, _supplyRow + (((down ? i : chain.Links.Count - i) - 0.5) * M.RowPitch)));
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
