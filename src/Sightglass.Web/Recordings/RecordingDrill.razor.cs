using Microsoft.AspNetCore.Components;
using Sightglass.Basics.Language;
using Sightglass.Book.Model;

namespace Sightglass.Web.Recordings;

/// <summary>From which rows of a recording a drill draws its states, which card solves it, and its making.</summary>
public sealed partial class RecordingDrill
{
    /// <summary>Moments that are offered, evenly spread.</summary>
    private const int Offered = 60;

    /// <summary>The recording's name, or the key of the file under work: by which what is typed is kept.</summary>
    [Parameter, EditorRequired]
    public string Of { get; set; } = "";

    /// <summary>Null where something is wrong with its mapping.</summary>
    [Parameter, EditorRequired]
    public Recording? Recording { get; set; }

    /// <summary>Makes the drill and puts it into the book.</summary>
    [Parameter, EditorRequired]
    public Func<DrillAsk, Task<MadeFiles>> Make { get; set; } = null!;

    /// <summary>Puts the mapping alone into the book; null where it is there.</summary>
    [Parameter]
    public Func<Task<MadeFiles>>? Put { get; set; }

    /// <summary>The train in whose names it is.</summary>
    [Parameter]
    public string? Train { get; set; }

    [Inject]
    private RecordingDesk Desk { get; set; } = null!;

    private DrillDraft Draft { get; set; } = new();

    private string From
    {
        get => Ask.From;
        set => Draft.Ask = Ask with { From = value };
    }

    private string To
    {
        get => Ask.To;
        set => Draft.Ask = Ask with { To = value };
    }

    private string Every
    {
        get => Ask.Every;
        set => Draft.Ask = Ask with { Every = value };
    }

    private string Title
    {
        get => Ask.Title;
        set => Draft.Ask = Ask with { Title = value };
    }

    private string Card
    {
        get => Ask.Card;
        set => Draft.Ask = Ask with { Card = value };
    }

    private bool IsBusy => Draft.Making is { IsCompleted: false };

    private MadeFiles? Made => Draft.Making is { IsCompletedSuccessfully: true } made ? made.Result : null;

    private bool IsRefused => Recording is null;

    private IReadOnlyList<(string Name, string Title)> Cards { get; set; } = [];

    private IReadOnlyList<string> Labels { get; set; } = [];

    private DrillAsk Ask => Draft.Ask;

    private StatesDraw? States => Recording is { } recording ? RecordingDesk.Stretch(recording, Ask).States : null;

    private string StretchSays => Recording is not { } recording ? Say.It("As soon as nothing is wrong with the mapping.")
        : RecordingDesk.Stretch(recording, Ask) is var (states, wrong) && states is null ? Say.Begin(wrong!) + "."
        : Say.With($"{states.Rows.Length} rows, from {recording.Table!.Labels[states.Rows[0]]} to {recording.Table.Labels[states.Rows[^1]]}, are states to draw from.");

    protected override async Task OnParametersSetAsync()
    {
        Draft = Desk.DrillOf(Of);
        Cards = Desk.Cards(Recording?.Train ?? Train);
        if (Recording?.Table is { } table)
        {
            int step = Math.Max(1, (table.Rows + Offered - 1) / Offered);
            Labels = [.. table.Labels.Where((_, i) => i % step == 0 || i == table.Rows - 1).Distinct(StringComparer.Ordinal)];
        }

        if (IsBusy)
        {
            await Finished(Draft.Making!); // begun before the page was loaded again
        }
    }

    private Task MakeAsync() => Do(() => Make(Ask));

    private Task PutAsync() => Do(Put!);

    /// <summary>What was typed stays where it is, whatever comes of it.</summary>
    private async Task Do(Func<Task<MadeFiles>> work)
    {
        if (IsBusy || IsRefused)
        {
            return;
        }

        await Finished(Draft.Making = work());
    }

    private async Task Finished(Task<MadeFiles> making)
    {
        StateHasChanged();
        await making;
        StateHasChanged();
    }
}
