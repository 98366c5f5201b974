using Sightglass.Basics.Language;
using Sightglass.Drawing.Diagram;
using Sightglass.Drawing.Shapes;
using Sightglass.Drawing.Svg;
using Sightglass.Web.Live;

namespace Sightglass.Web.Machine;

/// <summary>Stores and pipes.</summary>
internal sealed class PipePicture : MachineDrawing
{
    /// <summary>Labels large enough to be 13 px on a screen of 1366, where the drawing is made smaller.</summary>
    private static readonly DiagramOptions s_fitted = new() { LabelSize = 22 };

    /// <summary>What goes through a vehicle is drawn as large as it is shown, and scrolls.</summary>
    private static readonly DiagramOptions s_through = new() { LabelSize = 13 };

    /// <summary>A4 within margins of 12 mm, pixels of 1/96 inch.</summary>
    private const double PaperWide = 1032;

    private const double PaperHigh = 703;

    /// <summary>7.5 pt for letters of 13 px.</summary>
    private const double PaperScale = 10.0 / 13;

    private readonly DiagramOptions _options;
    private readonly DiagramLayout _layout;

    public PipePicture(DiagramInput input)
    {
        Goes = input.Nodes.Any(n => n.IsEnd);
        _options = Goes ? s_through : s_fitted;
        _layout = DiagramLayout.Of(input, _options);
    }

    public override bool Goes { get; }

    public override bool Stands => _layout.Sheet.Height > PaperHigh / PaperScale;

    public override bool IsEmpty => _layout.Bodies.IsEmpty;

    public override bool IsCrossed => !_layout.Crosses.IsEmpty;

    public override Bounds Sheet => _layout.Sheet;

    protected override double Letters => _options.LabelSize;

    public override string Key => _layout.Input.Nodes.Any(n => n.Symbol is DiagramSymbol.Contact or DiagramSymbol.Breaker)
        ? Say.It("Arm in line: closed, current can pass. Arm aslant: open.")
        : Say.It("Handle in line with the pipe: open. Handle across, valve solid: closed.");

    public override string TruthKey => Say.It("Hatched: what is really there.");

    public override string Render(MachineSnapshot seen, bool truth, bool operated = true) =>
        DiagramDrawing.Render(_layout, seen.Diagram with { ShowTruth = truth }, _options with { Interactive = operated }, SvgOptions.Inline with { IdPrefix = Prefix });

    public override DiagramValues Values(MachineSnapshot seen, bool truth) => DiagramValues.Of(_layout, seen.Diagram with { ShowTruth = truth }, Prefix);

    public override string RenderPieces() => DiagramPieces.Render(_layout, (Stands ? PaperHigh : PaperWide) / PaperScale, Prefix);
}
