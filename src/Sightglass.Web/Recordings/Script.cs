using Microsoft.JSInterop;

namespace Sightglass.Web.Recordings;

/// <summary>What the pages of recordings need of the browser.</summary>
internal static class Script
{
    /// <summary>The page says that it hears.</summary>
    public static async Task Alive(IJSRuntime js)
    {
        try
        {
            await using IJSObjectReference script = await js.InvokeAsync<IJSObjectReference>("import", "./assets/pages.js");
            await script.InvokeVoidAsync("alive");
        }
        catch (JSDisconnectedException)
        {
            // The browser has left in the meantime.
        }
    }
}
