using System.Collections.Immutable;
using System.Globalization;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using Sightglass.Basics.Language;
using Sightglass.Training.Papers;
using Sightglass.Web.Live;
using Sightglass.Web.Share;

namespace Sightglass.Web.Papers;

/// <summary>The cards of the book: how far each edition has come, who holds a copy, which are to be called back.</summary>
public sealed partial class PapersPage : IDisposable
{
    private readonly CancellationTokenSource _gone = new();

    [Inject]
    private ShareDesk Share { get; set; } = null!;

    [Inject]
    private MachineRoom Room { get; set; } = null!;

    [Inject]
    private IJSRuntime Js { get; set; } = null!;

    [Inject]
    private PaperDesk Desk { get; set; } = null!;

    /// <summary>The card shown, by the name of its file.</summary>
    [SupplyParameterFromQuery(Name = "card")]
    private string? Asked { get; set; }

    private ImmutableArray<CardShelf> Cards { get; set; } = [];

    private CardShelf? Shown { get; set; }

    private string By { get; set; } = "";

    private string Why { get; set; } = "";

    private string Holder { get; set; } = "";

    private string? Trouble { get; set; }

    private bool Trying { get; set; }

    private string Sentence
    {
        get
        {
            int approved = Cards.Count(c => c.InForce is not null);
            int recall = Cards.Sum(c => c.ToRecall.Count());
            if (Cards.IsEmpty)
            {
                return Say.It("The book has no cards yet. Write one, and try it.");
            }

            string first = approved switch
            {
                0 => Say.With($"No card is approved of {Cards.Length}."),
                1 => Say.With($"One card is approved of {Cards.Length}."),
                _ => Say.With($"{approved} cards are approved of {Cards.Length}."),
            };
            string second = recall switch
            {
                0 => Say.It("No copy is to be called back."),
                1 => Say.It("One copy is to be called back."),
                _ => Say.With($"{recall} copies are to be called back."),
            };
            return $"{first} {second}";
        }
    }

    public void Dispose()
    {
        _gone.Cancel();
        _gone.Dispose();
    }

    protected override void OnParametersSet()
    {
        Trouble = null;
        Look();
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

    private void Look()
    {
        Cards = Desk.All();
        Shown = Cards.FirstOrDefault(c => c.Name == Asked) ?? Cards.FirstOrDefault();
    }

    private async Task MakeAsync()
    {
        Trouble = null;
        Trying = true;
        CardShelf card = Shown!;
        try
        {
            Trouble = await Task.Run(() => Desk.Make(card, By, _gone.Token), CancellationToken.None);
        }
        finally
        {
            Trying = false;
        }

        Look();
    }

    private void Move(EditionFile edition, PaperState to) => Do(() => Desk.Move(edition.Edition.Id, to, By, Why));

    private void Give(EditionFile edition) => Do(() => Desk.Give(edition.Edition.Id, Holder));

    private void Back(PaperCopy copy) => Do(() =>
    {
        Desk.Back(copy.Id, Why);
        return null;
    });

    private void Do(Func<string?> act)
    {
        Trouble = act();
        if (Trouble is null)
        {
            (Why, Holder) = ("", "");
        }

        Look();
    }

    /// <summary>What is as usual is quiet: a card that nobody made an edition of says nothing.</summary>
    private static string Stands(CardShelf card) => card.Latest is null ? "" : card.Stands;

    private static string AddressOf(CardShelf card) => $"papers?card={Uri.EscapeDataString(card.Name)}";

    private static string FileOf(EditionFile edition, string size) => $"papers/card.pdf?edition={edition.Edition.Id}&size={size}";

    private static string Day(DateTimeOffset at) => at.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static string ActOf(PaperState next) => next switch
    {
        PaperState.Reviewed => Say.It("I have reviewed it"),
        PaperState.Approved => Say.It("I approve it"),
        PaperState.Draft => Say.It("Send back"),
        _ => Say.It("Withdraw"),
    };
}
