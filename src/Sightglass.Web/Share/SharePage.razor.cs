using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using Sightglass.Web.Parts;

namespace Sightglass.Web.Share;

/// <summary>The code with which a phone is paired, for whoever sits at this computer; a used code gives way to the next at once.</summary>
public sealed partial class SharePage : IDisposable
{
    private Courier _courier = null!;

    [Inject]
    private ShareDesk Desk { get; set; } = null!;

    [Inject]
    private IJSRuntime Js { get; set; } = null!;

    private Sharing? Sharing => Desk.Sharing;

    public void Dispose()
    {
        if (Sharing is { } sharing)
        {
            sharing.Pairing.Changed -= Show;
        }
    }

    protected override void OnInitialized()
    {
        _courier = new(InvokeAsync, () =>
        {
            StateHasChanged();
            return Task.CompletedTask;
        });
        if (Sharing is { } sharing)
        {
            sharing.Pairing.Changed += Show;
        }
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
            await script.InvokeVoidAsync("alive");
        }
        catch (JSDisconnectedException)
        {
            // The browser has left in the meantime.
        }
    }

    private void Show() => _courier.Want();
}
