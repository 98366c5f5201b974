using M = Sightglass.Drawing.Diagram.ThroughMeasure;

namespace Sightglass.Drawing.Diagram;

/// <summary>
/// Gives a vehicle's columns their x and its gaps their heights: columns in their order, each as far left as what stands in the same gaps allows; symbols in the gap of
/// their column that needs least more height for them.
/// </summary>
internal sealed class ThroughSpread
{
    /// <summary>Two that touch do not meet, pixels.</summary>
    private const double Touch = 1e-6;

    private readonly ThroughBlock _block;
    private readonly DiagramInput _input;
    private readonly double _size;
    private readonly double[] _taken;
    private readonly List<(double From, double To)>[] _spans;
    private readonly double[] _busParts;
    private double _top = double.NegativeInfinity;
    private double _foot = double.NegativeInfinity;

    public ThroughSpread(ThroughBlock block, DiagramInput input, double size, double left, HashSet<string> marked)
    {
        (_block, _input, _size, Left) = (block, input, size, left);
        foreach (DiagramNode path in block.Rows.Where(r => r.Bus is not null).SelectMany(r => r.Bus!.Nodes).Concat(block.Columns.SelectMany(c => c.Links).Select(l => l.Path)).Where(n => n.Role == DiagramRole.Path))
        {
            Words[path.Id] = ThroughWords.Of(path, input, marked, size);
        }

        foreach (DiagramNode vessel in block.Rows.Where(r => r.Sort is ThroughRowSort.Vessels or ThroughRowSort.Cylinders).SelectMany(r => r.Nodes))
        {
            List<DiagramNode> gauges = [.. block.Nodes.Where(n => vessel.Symbol != DiagramSymbol.Cylinder && n.Role == DiagramRole.Gauge && n.Of.Length > 0 && n.Of[0] == vessel.Id).OrderBy(n => n.Id, StringComparer.Ordinal)];
            double words = Text.TextMeasure.Width(vessel.Label, Text.TextFace.SerifItalic400, size * 1.4) + 20;
            Vessels[vessel.Id] = new(vessel, Math.Max(M.LeastVessel, Math.Max(words, gauges.Select(GaugeWidth).DefaultIfEmpty(0).Max() + M.Wall))) { Gauges = gauges };
        }

        ChooseGaps();
        double start = left + EndWidth(true);
        _taken = [.. block.Rows.Select(_ => start)];
        _spans = [.. block.Rows.Select(_ => new List<(double, double)>())];
        _busParts = [.. block.Rows.Select(_ => start)];
        double x = start;
        foreach (ThroughColumn column in block.Columns.Where(c => !IsFreeToMove(c)))
        {
            x = Place(column, x);
        }

        foreach (ThroughColumn column in block.Columns.Where(IsFreeToMove))
        {
            Fit(column, start);
        }

        foreach (ThroughVessel vessel in Vessels.Values.Where(v => !v.IsPlaced).OrderBy(v => v.Node.Order))
        {
            Open(vessel, Math.Max(start, EdgeOf(vessel) + M.VesselGap));
        }

        double end = new[] { start + 40, x + 20, _top, _foot }.Concat(_taken).Max();
        Right = end + EndWidth(false);
        Heights();
    }

    public double Left { get; }

    public double Right { get; }

    /// <summary>Where the part between the ends begins and ends.</summary>
    public double InnerLeft => Left + EndWidth(true);

    public double InnerRight => Right - EndWidth(false);

    public Dictionary<string, ThroughWords> Words { get; } = new(StringComparer.Ordinal);

    public Dictionary<string, ThroughVessel> Vessels { get; } = new(StringComparer.Ordinal);

    public double GaugeWidth(DiagramNode gauge) =>
        (2 * M.Ring) + 8 + Math.Max(Text.TextMeasure.Width(gauge.Label, Text.TextFace.Sans500, _size), Text.TextMeasure.Width("000 psi", Text.TextFace.Sans600, _size));

    /// <summary>Height that a column's symbols need in their gap.</summary>
    public double HeightOf(ThroughColumn column) => column.Gauges.Count > 0 ? (column.Gauges.Count * M.RingPitch) + 6
        : column.InRow is { } part ? M.Below(part) + Words[part.Id].Height
        : column.Links.Sum(l => SlotOf(l)) + (column.Lower is null ? column.EndLine is null ? 12 : 10 + Words.Values.First().Line : 0);

    public double SlotOf(DiagramLink link) => Math.Max(2 * M.Half(link.Path), Words[link.Path.Id].Height + 12);

    private int RowIndex(string node) => _block.Rows.IndexOf(_block.RowOf(node));

    /// <summary>The gaps through which a column passes.</summary>
    private IEnumerable<int> GapsOf(ThroughColumn column)
    {
        int row = RowIndex(column.Upper);
        return column.InRow is not null ? [row - 1, row]
            : column.Lower is { } lower ? Enumerable.Range(row, RowIndex(lower) - row)
            : [column.IsAbove ? row - 1 : Math.Min(row, _block.Rows.Count - 1)];
    }

    private void ChooseGaps()
    {
        double[] heights = new double[_block.Rows.Count];
        foreach (ThroughColumn column in _block.Columns.OrderBy(c => GapsOf(c).Count()).ThenBy(ThroughBlock.NameOf, StringComparer.Ordinal))
        {
            double needed = HeightOf(column);
            column.Gap = column.InRow is not null ? RowIndex(column.Upper)
                : GapsOf(column).OrderBy(g => Math.Max(0, needed - heights[g])).ThenByDescending(g => g).First();
            heights[column.Gap] = Math.Max(heights[column.Gap], needed);
        }
    }

    private double Place(ThroughColumn column, double after)
    {
        (double left, double right) = Extent(column);
        double x = after;
        foreach (int gap in GapsOf(column))
        {
            x = Math.Max(x, _taken[gap] + (gap == column.Gap || column.InRow is not null ? left : M.Bare));
        }

        foreach (string end in new[] { column.Upper, column.Lower }.OfType<string>())
        {
            x = Math.Max(x, _busParts[RowIndex(end)] + (column.InRow is not null ? left : M.Bare));
            if (Vessels.TryGetValue(end, out ThroughVessel? vessel) && !vessel.IsPlaced)
            {
                x = Math.Max(x, EdgeOf(vessel) + M.VesselGap + M.Wall);
            }
        }

        column.X = x;
        foreach (int gap in GapsOf(column))
        {
            double reach = gap == column.Gap ? right : column.InRow is not null ? left : M.Bare;
            _taken[gap] = Math.Max(_taken[gap], x + reach + M.Between);
            _spans[gap].Add((x - (gap == column.Gap || column.InRow is not null ? left : M.Bare), x + reach + M.Between));
        }

        foreach (string end in new[] { column.Upper, column.Lower }.OfType<string>())
        {
            int row = RowIndex(end);
            if (column.InRow is not null)
            {
                _busParts[row] = x + left + M.Between;
            }

            if (Vessels.TryGetValue(end, out ThroughVessel? vessel))
            {
                Attach(vessel, x);
            }
        }

        return x;
    }

    // A dead end on an undivided line that goes through may stand anywhere along it.
    private bool IsFreeToMove(ThroughColumn column) => column.Lower is null && column.InRow is null && _block.RowOf(column.Upper) is { Sort: ThroughRowSort.Bus } row && !row.Bus!.Middle.Any();

    private void Fit(ThroughColumn column, double start)
    {
        (double left, double right) = Extent(column);
        List<(double From, double To)> spans = _spans[GapsOf(column).Single()];
        double x = start + left;
        bool Meets((double From, double To) span) => span.From < x + right + M.Between - Touch && span.To > x - left + Touch;
        while (spans.Exists(Meets))
        {
            x = spans.Where(Meets).Max(s => s.To) + left;
        }

        column.X = x;
        spans.Add((x - left, x + right + M.Between));
        _taken[GapsOf(column).Single()] = spans.Max(s => s.To);
    }

    private void Attach(ThroughVessel vessel, double x)
    {
        if (!vessel.IsPlaced)
        {
            Open(vessel, x - M.Wall);
        }
        else if (vessel.Right >= EdgeOf(vessel) - 0.01)
        {
            vessel.Right = Math.Max(vessel.Right, x + M.Wall);
            SetEdge(vessel, vessel.Right);
        }
    }

    private void Open(ThroughVessel vessel, double left)
    {
        (vessel.Left, vessel.Right) = (left, left + vessel.Least);
        SetEdge(vessel, vessel.Right);
    }

    private double EdgeOf(ThroughVessel vessel) => vessel.Node.Symbol == DiagramSymbol.Cylinder ? _foot : _top;

    private void SetEdge(ThroughVessel vessel, double edge)
    {
        if (vessel.Node.Symbol == DiagramSymbol.Cylinder)
        {
            _foot = Math.Max(_foot, edge);
        }
        else
        {
            _top = Math.Max(_top, edge);
        }
    }

    // What a column takes to the left and to the right of its pipe where its symbols stand.
    private (double Left, double Right) Extent(ThroughColumn column)
    {
        if (column.Gauges.Count > 0)
        {
            return (M.Ring + 4, column.Gauges.Max(GaugeWidth) - M.Ring);
        }

        if (column.InRow is { } part)
        {
            double half = Math.Max(DiagramPart.SizeOf(part.Symbol).Along + 16, (Words[part.Id].Width / 2) + 4);
            return (half, half);
        }

        double end = column.EndLine is { } line ? 8 + Text.TextMeasure.Width(line.Label, Text.TextFace.Sans600, _size) : 0;
        return (column.Links.Select(l => DiagramPart.SizeOf(l.Path.Symbol).Across).DefaultIfEmpty(0).Max() + 6,
            column.Links.Select(l => M.WordsAt(l.Path) + Words[l.Path.Id].Width).Append(Math.Max(M.Bare, end)).Max());
    }

    /// <summary>Room for the cocks and hoses at an end.</summary>
    private double EndWidth(bool left) => _block.Rows.Select(r => left ? (Hose: r.Bus?.Left, Cock: r.Bus?.LeftCock) : (Hose: r.Bus?.Right, Cock: r.Bus?.RightCock))
        .Where(e => e.Hose is not null)
        .Select(e => Math.Max(Text.TextMeasure.Width(e.Hose!.Label, Text.TextFace.Sans600, _size) + 24, e.Cock is null ? 0 : CockAt + (Words[e.Cock.Id].Width / 2) + 12))
        .DefaultIfEmpty(0).Max();

    /// <summary>From the end of a vehicle to the middle of the cock there.</summary>
    public double CockAt => 26 + (_size * 3.8);

    private void Heights()
    {
        for (int g = 0; g < _block.Rows.Count; g++)
        {
            ThroughRow row = _block.Rows[g];
            double symbols = _block.Columns.Where(c => c.Gap == g).Select(HeightOf).DefaultIfEmpty(0).Max();
            double cocks = new[] { row.Bus?.LeftCock, row.Bus?.RightCock }.OfType<DiagramNode>().Select(c => M.Below(c) + Words[c.Id].Height - M.Clear).DefaultIfEmpty(0).Max();
            bool named = g + 1 < _block.Rows.Count && _block.Rows[g + 1].Nodes.Exists(n => n.Role == DiagramRole.Line && n.Label.Length > 0);
            double words = named ? Math.Ceiling(_size * 1.25) + 2 : 0;
            row.Gap = Math.Max(symbols, cocks) + (2 * M.Clear) + words;
        }
    }
}
