using Sightglass.Basics.Language;
using Sightglass.Book.Model;
using Sightglass.Drawing.Diagram;
using Sightglass.Drawing.Ladder;
using Sightglass.Drawing.Shapes;
using Sightglass.Drawing.Svg;
using Sightglass.Web.Live;

namespace Sightglass.Web.Machine;

/// <summary>Circuits between two rails.</summary>
internal sealed class CircuitPicture(LadderInput input) : MachineDrawing
{
    /// <summary>As wide as the page at 1440, in the letters of the page.</summary>
    private static readonly LadderOptions s_options = new() { LabelSize = 14, MostWide = 1340 };

    private readonly LadderLayout _layout = LadderLayout.Of(input, s_options);

    /// <summary>Whether a system is drawn as circuits.</summary>
    public static bool Draws(ClassBook book, string? system) => system is not null && LadderInput.Has(book, system);

    public override bool Goes => true;

    public override bool IsLine => false;

    public override Bounds Sheet => _layout.Sheet;

    protected override double Letters => s_options.LabelSize;

    public override string Key => Say.It("Contacts stand as they are: aslant open, upright made. A lamp that is lit has rays; a coil that is up, and what is at work, is solid.");

    public override string TruthKey => Say.It("In colour: volts over the lower rail, amperes, and wires that have a voltage.");

    public override string Render(MachineSnapshot seen, bool truth, bool operated = true) =>
        LadderDrawing.Render(_layout, seen.Circuit with { ShowTruth = truth }, s_options with { Interactive = operated }, SvgOptions.Inline with { IdPrefix = Prefix });

    public override string RenderPieces() => LadderDrawing.RenderRows(_layout, Prefix);

    public override DiagramValues Values(MachineSnapshot seen, bool truth) => DiagramValues.Of(_layout, seen.Circuit with { ShowTruth = truth }, Prefix);
}
