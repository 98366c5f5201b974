using System.Runtime.CompilerServices;
using Sightglass.Book.Model;
using Sightglass.Drawing.Diagram;
using Sightglass.Drawing.Svg;
using Sightglass.Plant.Plans;

namespace Sightglass.Web.Machine;

/// <summary>The diagram of what is alive in a plan: laid out once, drawn for whoever comes.</summary>
internal sealed class MachineDrawing
{
    private const string Prefix = "d-";

    /// <summary>Labels large enough to be 13 px on a screen of 1366, where the drawing is made smaller.</summary>
    private static readonly DiagramOptions s_options = new() { LabelSize = 22 };

    private static readonly ConditionalWeakTable<Plan, MachineDrawing> s_drawn = [];

    private MachineDrawing(Plan plan)
    {
        System = plan.Book.Systems.Values.Where(s => s.Alive).OrderBy(s => s.Span).FirstOrDefault()?.Name; // in the author's order
        Layout = DiagramLayout.Of(DiagramInput.Of(plan.Book, System), s_options);
    }

    /// <summary>Name of the system, or null for the whole book.</summary>
    public string? System { get; }

    public DiagramLayout Layout { get; }

    public static MachineDrawing Of(Plan plan) => s_drawn.GetValue(plan, p => new(p));

    public string Render(DiagramState state) =>
        DiagramDrawing.Render(Layout, state, s_options, SvgOptions.Inline with { IdPrefix = Prefix });

    public DiagramValues Values(DiagramState state) => DiagramValues.Of(Layout, state, Prefix);
}
