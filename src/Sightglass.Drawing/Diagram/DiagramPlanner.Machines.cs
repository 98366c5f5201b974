using Sightglass.Drawing.Shapes;
using M = Sightglass.Drawing.Diagram.DiagramMeasure;

namespace Sightglass.Drawing.Diagram;

internal sealed partial class DiagramPlanner
{
    private const double MachineSlot = 36;

    private void PlaceMachine(DiagramTerminal machine)
    {
        List<DiagramChain> arriving = [.. machine.In.Where(c => c.Route == DiagramRoute.Run)];
        List<DiagramChain> through = [.. arriving.Where(c => c.Links.Count == 0 && c.From is { IsNet: true }).SelectMany(c => c.From!.Out).Where(c => c.Route == DiagramRoute.Riser && !_risers.Exists(r => r.Chain == c))];
        List<DiagramChain> rising = [.. machine.Out.Where(c => c.Route == DiagramRoute.Riser), .. through.Distinct()];
        List<DiagramChain> leaving = [.. machine.Out.Where(c => c.Route == DiagramRoute.Run)];
        List<DiagramChain> stubs = [.. machine.In.Concat(machine.Out).Where(c => c.Route == DiagramRoute.Stub)];
        List<RunEnd> ends = [.. arriving.Select(PlaceRun)];
        int above = rising.Count + stubs.Count(s => s.To is null);
        double pitch = above < 2 ? MachineSlot : rising.SelectMany(c => c.Links).Select(l => (2 * DiagramPart.SizeOf(l.Path.Symbol).Across) + 20 + Wrapped(l.Path.Label).Max(w => _board.Width(w))).Append(MachineSlot).Max();
        double width = Math.Max(M.MachineWidth, Math.Max((arriving.Count + leaving.Count + stubs.Count(s => s.From is null)) * MachineSlot, above * pitch) + 12);
        int slots = arriving.Count + leaving.Count + stubs.Count(s => s.From is null);
        double firstSlot = FirstSlot(machine, width, slots);
        double x = _bodyEnd;
        foreach (RunEnd end in ends)
        {
            x = Math.Max(x, end.X + M.RunGap - firstSlot);
            for (int lane = 0; lane <= end.Lane; lane++)
            {
                x = Math.Max(x, _laneEnds[lane] + 8 - firstSlot);
            }
        }

        foreach (DiagramChain chain in rising)
        {
            x = Math.Max(x, ReturnFrom(chain.To!) - (width / 2));
        }

        while (Enumerable.Range(0, ends.Count).Any(i => !_board.IsOpen(x + firstSlot + (i * MachineSlot), M.TankHeight, x + firstSlot + (i * MachineSlot), LaneY(ends[i].Lane) - 4)))
        {
            x += 8;
        }

        foreach (DiagramChain chain in stubs.Where(s => s.From is null))
        {
            double reach = chain.Links.Select(l => DiagramPart.SizeOf(l.Path.Symbol).Across).DefaultIfEmpty(6).Max();
            double first = firstSlot + (arriving.Count * MachineSlot) - reach;
            while (!_board.IsFree(new Bounds(x + first, M.TankHeight + 4, x + first + (2 * reach) + (stubs.Count * MachineSlot), M.TankHeight + 20 + (chain.Links.Count * 60))))
            {
                x += 8;
            }
        }

        double top = M.TankHeight - M.MachineHeight;
        DiagramBody body = new(machine.Node, new Bounds(x, top, x + width, M.TankHeight));
        _board.Bodies.Add(body);
        _bodies[machine] = body;
        double slot = x + firstSlot;
        for (int i = 0; i < arriving.Count; i++, slot += MachineSlot)
        {
            Arrive(arriving[i], ends[i], slot, through);
        }

        foreach (DiagramChain chain in stubs.Where(s => s.From is null))
        {
            MachineStub(chain, slot, M.TankHeight, true);
            slot += MachineSlot;
        }

        foreach (DiagramChain chain in leaving)
        {
            _slots[chain] = slot;
            _elementsFrom = Math.Max(_elementsFrom, slot + 30);
            slot += MachineSlot;
        }

        slot = x + (width / 2) - ((above - 1) * pitch / 2);
        foreach (DiagramChain chain in rising)
        {
            _risers.Add((chain, slot, top));
            slot += pitch;
        }

        foreach (DiagramChain chain in stubs.Where(s => s.To is null))
        {
            MachineStub(chain, slot, top, false);
            slot += pitch;
        }

        _bodyEnd = Math.Max(x + width, MachineWords(body)) + M.TankGap;
    }

    // What arrives comes from the left: near the right end of the machine it leaves room to stand over its own run.
    private static double FirstSlot(DiagramTerminal machine, double width, int slots) => machine.Out.Exists(c => c.Route == DiagramRoute.Run)
        ? (width / 2) - ((slots - 1) * MachineSlot / 2)
        : width - (MachineSlot / 2) - ((slots - 1) * MachineSlot);

    // The pipe up into the machine; what passes through it to the return side is in that pipe too.
    private void Arrive(DiagramChain chain, RunEnd end, double slot, List<DiagramChain> through)
    {
        List<(string, int)> terms = Terms(chain);
        if (chain.Links.Count == 0 && chain.From is { IsNet: true } from)
        {
            terms.AddRange(through.Where(c => c.From == from).SelectMany(Terms));
            DiagramNet net = _nets[from];
            net.Joints.RemoveAt(net.Joints.Count - 1);
            net.Join(end.X, Against(terms));
        }

        _board.Pipe(Name(chain), [.. end.Start, (slot, LaneY(end.Lane)), (slot, M.TankHeight)], terms);
        for (int lane = 0; lane <= end.Lane; lane++)
        {
            UseLane(lane, slot + 8);
        }
    }

    private void MachineStub(DiagramChain chain, double x, double edge, bool below)
    {
        int way = below ? 1 : -1;
        double y = edge + (way * 26);
        bool inward = chain.From is null;
        foreach (DiagramLink link in inward ? Enumerable.Reverse(chain.Links) : chain.Links)
        {
            _board.Part(link.Path, x, y, (below == inward) == link.Reversed ? 90 : 270);
            y += way * 46;
        }

        double end = y - (way * 10);
        (double, double)[] points = [(x, edge), (x, end)];
        _board.Pipe(Name(chain), inward ? points.Reverse() : points, Terms(chain));
        Open(chain, new DiagramOpenEnd(x, end + (inward ? -way * 2 : way * 6), below != inward));
    }

    // Name, state and controls to the left of the machine where there is room, else to the right; returns where they end.
    private double MachineWords(DiagramBody body)
    {
        List<DiagramNode> controls = Controls(body.Node);
        Bounds b = body.Box;
        double width = controls.Select(c => _board.Width(c.Label) + 21).Append(_board.WidthOf(body.Node.Label, "body-words")).Append(_board.Width("notch 8, 650 L/h")).Max();
        double y = b.Low + 28 + (3 * _board.LineHeight);
        Bounds beside = new(b.Left - 8 - width, b.Low, b.Left - 8, y + (controls.Count * (_board.LineHeight + 6)));
        bool left = _board.IsFree(beside, 6) && _board.IsClearOfPipes(beside);
        int way = left ? -1 : 1;
        string anchor = left ? "end" : "start";
        double x = left ? b.Left - 8 : b.Right + 8;
        _board.Bodies[^1] = body with { WordsAt = x, WordsAnchor = anchor };
        _board.Label(body.Node.Label, "body-words", x, b.Low + 20, anchor);
        _board.Reserve(left ? x - width : x, b.Low + 22 + _board.LineHeight, width, 2);
        foreach (DiagramNode control in controls)
        {
            double edge = x + (way * 16);
            _board.Instruments.Add(new DiagramInstrument(control, new Bounds(Math.Min(x, edge), y - 10, Math.Max(x, edge), y + 4), [], false));
            _board.Label(control.Label, "d-lab", x + (way * 21), y + 2, anchor);
            y += _board.LineHeight + 6;
        }

        return left ? b.Right : x + width + 8;
    }
}
