using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Rendering;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.JSInterop;

namespace Sightglass.Web.Parts;

/// <summary>
/// A page's name as the browser and a screen reader tell it. It stands in the head from the first bytes and is only ever changed for another one: a head that is alive
/// itself takes the name out for a moment when the connection is made, and the page then has none.
/// </summary>
public sealed class PageName : ComponentBase
{
    /// <summary>The page's own word: <c>Walk</c>.</summary>
    [Parameter]
    [EditorRequired]
    public string Says { get; set; } = "";

    [Inject]
    private IJSRuntime Js { get; set; } = null!;

    private string Whole => $"{Says} · Sightglass";

    protected override void BuildRenderTree(RenderTreeBuilder builder)
    {
        ArgumentNullException.ThrowIfNull(builder);
        builder.OpenComponent<PageTitle>(0);
        builder.AddComponentParameter(1, nameof(PageTitle.ChildContent), (RenderFragment)(title => title.AddContent(0, Whole)));
        builder.CloseComponent();
    }

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (!firstRender)
        {
            return;
        }

        try
        {
            await using IJSObjectReference script = await Js.InvokeAsync<IJSObjectReference>("import", "./assets/pages.js");
            await script.InvokeVoidAsync("name", Whole);
        }
        catch (JSDisconnectedException)
        {
            // The browser has left in the meantime; there is no head any more.
        }
    }
}
