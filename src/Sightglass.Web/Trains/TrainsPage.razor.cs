using System.Collections.Immutable;
using System.Globalization;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Language;
using Sightglass.Book.Consists;
using Sightglass.Book.Model;
using Sightglass.Paper.Html;
using Sightglass.Paper.Papers;
using Sightglass.Trials.Consists;
using Sightglass.Web.Live;

namespace Sightglass.Web.Trains;

/// <summary>A train on one sheet before it is coupled: one of the book, or one that somebody writes.</summary>
public sealed partial class TrainsPage
{
    private const string Typed = "train";

    private bool _isOwn;
    private string _typed = "";
    private ImmutableArray<Diagnostic> _wrong = [];
    private string _asked = "";
    private Consist? _shown;

    [Inject]
    private MachineRoom Room { get; set; } = null!;

    [Inject]
    private TrainDesk Desk { get; set; } = null!;

    [Inject]
    private IJSRuntime Js { get; set; } = null!;

    [Inject]
    private NavigationManager Navigation { get; set; } = null!;

    [SupplyParameterFromQuery(Name = "train")]
    private string? Train { get; set; }

    [SupplyParameterFromQuery(Name = "grade")]
    private string? Grade { get; set; }

    [SupplyParameterFromQuery(Name = "adhesion")]
    private string? Adhesion { get; set; }

    private string? Paper { get; set; }

    private string Waiting { get; set; } = "";

    private IReadOnlyList<Train> All => [.. Room.Shelf.Book.Trains.Values.OrderBy(t => t.Span)];

    private string Named => TrainFiles.TrainOf(Room.Shelf.Book, Train)?.Name ?? "";

    private string GradeShown => ShareText(TrainFiles.Percent(Grade, 0, 10) ?? 0);

    private string AdhesionShown => ShareText(TrainFiles.Percent(Adhesion, 1, 50) ?? Consist.UsualAdhesion);

    private string PaperAddress => $"trains/paper.pdf?train={Uri.EscapeDataString(Named)}&grade={GradeShown}&adhesion={AdhesionShown}";

    private int Rows => Math.Clamp(_typed.Count(c => c == '\n') + 2, 8, 24);

    protected override async Task OnParametersSetAsync()
    {
        string asked = string.Join('|', Room.Shelf.Hash, Named, GradeShown, AdhesionShown);
        if (!RendererInfo.IsInteractive || (asked == _asked && Paper is not null))
        {
            Waiting = Say.It("One moment …");
            return;
        }

        _asked = asked;
        if (TrainFiles.ConsistOf(Room.Shelf.Book, Train, Grade, Adhesion) is not { } consist)
        {
            Waiting = Say.It("The book lists no trains: make up your own.");
            return;
        }

        (_isOwn, _wrong, _typed) = (false, [], ConsistText.Of(consist));
        await Show(consist);
    }

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (firstRender)
        {
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
    }

    private static string ShareText(double share) => (share * 100).ToString("0.##", CultureInfo.InvariantCulture);

    private async Task CheckOwn()
    {
        DiagnosticList found = [];
        Consist? consist = ConsistReader.Read(new SourceText(Typed, _typed), Room.Shelf.Book, found);
        _wrong = [.. found];
        if (consist is not null)
        {
            _isOwn = true;
            await Show(consist);
        }
    }

    private async Task Show(Consist consist)
    {
        Paper = null;
        _shown = consist;
        Waiting = Say.It("The train is put together, charged and tried …");
        StateHasChanged();
        TrainCheckResult result = await Desk.Of(consist);
        if (ReferenceEquals(_shown, consist))
        {
            Paper = HtmlPaper.Write(TrainPaper.Of(result));
        }
    }

    private void Go(ChangeEventArgs e, string what)
    {
        string value = e.Value?.ToString() ?? "";
        Dictionary<string, object?> query = new() { ["train"] = Named, ["grade"] = GradeShown, ["adhesion"] = AdhesionShown, [what.ToLowerInvariant()] = value };
        Navigation.NavigateTo(Navigation.GetUriWithQueryParameters("trains", query));
    }
}
