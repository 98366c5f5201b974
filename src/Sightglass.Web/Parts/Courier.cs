using Microsoft.JSInterop;
using Sightglass.Basics.Language;

namespace Sightglass.Web.Parts;

/// <summary>
/// Brings a page what is newest, one errand at a time: a slow screen gets fewer pictures, never old ones. It speaks as where it was made, whoever has changed something.
/// </summary>
/// <param name="dispatch">Runs on the page's own thread.</param>
/// <param name="send">Sends what is newest now.</param>
internal sealed class Courier(Func<Func<Task>, Task> dispatch, Func<Task> send)
{
    private readonly Tongue _tongue = Tongue.Spoken;
    private readonly Lock _gate = new();
    private bool _wanted;
    private bool _sending;

    /// <summary>Something is newer. From any thread.</summary>
    public void Want()
    {
        lock (_gate)
        {
            _wanted = true;
            if (_sending)
            {
                return;
            }

            _sending = true;
        }

        _ = dispatch(Send);
    }

    private async Task Send()
    {
        using IDisposable speaking = _tongue.Speak();
        try
        {
            while (TakeWish())
            {
                await send();
            }
        }
        catch (JSDisconnectedException)
        {
            // The page is gone.
        }
        catch (TaskCanceledException)
        {
            // The page is gone.
        }
    }

    private bool TakeWish()
    {
        lock (_gate)
        {
            bool wanted = _wanted;
            _wanted = false;
            _sending = wanted;
            return wanted;
        }
    }
}
