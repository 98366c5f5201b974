using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Rendering;

namespace Sightglass.Web.Parts;

/// <summary>
/// A drawing that is written once; afterwards only small changes are sent to it, so it must never be written again, not even before the browser has said that it
/// stands: the small changes may have replaced by then what would be taken out. Give it a new key for a new drawing.
/// </summary>
public sealed class StillMarkup : ComponentBase
{
    private bool _written;

    [Parameter, EditorRequired]
    public string Markup { get; set; } = "";

    protected override bool ShouldRender() => !_written;

    protected override void BuildRenderTree(RenderTreeBuilder builder)
    {
        ArgumentNullException.ThrowIfNull(builder);
        builder.AddMarkupContent(0, Markup);
        _written = true;
    }
}
