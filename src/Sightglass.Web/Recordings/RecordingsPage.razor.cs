using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Forms;
using Microsoft.JSInterop;
using Sightglass.Basics.Language;
using Sightglass.Book.Model;
using Sightglass.Book.Recordings;

namespace Sightglass.Web.Recordings;

/// <summary>Recordings of the book, and files that may become some: those that lie in its folder, and those that somebody brings.</summary>
public sealed partial class RecordingsPage
{
    [Inject]
    private RecordingDesk Desk { get; set; } = null!;

    [Inject]
    private NavigationManager Navigation { get; set; } = null!;

    [Inject]
    private IJSRuntime Js { get; set; } = null!;

    private IReadOnlyList<string> Unread { get; set; } = [];

    private string Called { get; set; } = "";

    private string? Wrong { get; set; }

    private bool IsBusy { get; set; }

    private static string TooLarge => Say.With($"The file is larger than {RecordingSource.MostBytes >> 20} MiB, which is more than a recording may have: cut out the stretch that matters.");

    protected override void OnInitialized() => Unread = Desk.Unread;

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (firstRender)
        {
            await Script.Alive(Js);
        }
    }

    private async Task TakeAsync(InputFileChangeEventArgs chosen)
    {
        if (chosen.File.Size > RecordingSource.MostBytes)
        {
            Wrong = TooLarge;
            return;
        }

        await BringAsync(chosen.File.Name, () => Task.FromResult(chosen.File.OpenReadStream(RecordingSource.MostBytes)));
    }

    private async Task PasteAsync()
    {
        await BringAsync(Called.Trim().Length > 0 ? Called.Trim() : Say.It("pasted rows"), async () =>
        {
            await using IJSObjectReference script = await Js.InvokeAsync<IJSObjectReference>("import", "./assets/pages.js");
            IJSStreamReference text = await script.InvokeAsync<IJSStreamReference>("textOf", "paste");
            return text.Length > RecordingSource.MostBytes ? throw new IOException() : await text.OpenReadStreamAsync(RecordingSource.MostBytes);
        });
    }

    /// <summary>What was brought stays where it was typed or chosen until it is taken.</summary>
    private async Task BringAsync(string name, Func<Task<Stream>> open)
    {
        if (IsBusy)
        {
            return;
        }

        (IsBusy, Wrong) = (true, null);
        StateHasChanged();
        try
        {
            await using Stream file = await open();
            (MappingDraft? draft, Wrong) = await Desk.Bring(name, file);
            if (draft is not null)
            {
                Navigation.NavigateTo(MappingPage.AddressOf(draft.Key));
            }
        }
        catch (IOException)
        {
            Wrong = TooLarge;
        }
        finally
        {
            IsBusy = false;
        }
    }

    private static string Rows(Recording recording) => Say.With($"{recording.Table!.Rows} rows from {recording.Table.Labels[0]} to {recording.Table.Labels[^1]}");

    private string Drawn(Recording recording) => Desk.DrawingFrom(recording.Name) is { Count: > 0 } drawing
        ? Say.With($"drawn from: {string.Join("; ", drawing.Select(s => Say.Book(s.Name)))}")
        : Say.It("no situation draws from it yet");
}
