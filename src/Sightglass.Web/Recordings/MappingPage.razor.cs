using System.Collections.Immutable;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using Sightglass.Basics.Language;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Model;
using Sightglass.Book.Recordings;
using Sightglass.Web.Live;

namespace Sightglass.Web.Recordings;

/// <summary>A recorder's file that is to become a recording of the book: what its columns are, said by hand, with what is still wrong at its place.</summary>
public sealed partial class MappingPage
{
    /// <summary>Columns that are shown at once.</summary>
    private const int s_first = 60;

    private static readonly string[] s_timeUnits = ["s", "ms", "min", "h"];

    /// <summary>The file: the key of one that was brought, or the path of one in the book's folder.</summary>
    [SupplyParameterFromQuery(Name = "of")]
    public string? File { get; set; }

    /// <summary>A recording of the book that is to be changed, by its name; null where a file is to become a new one.</summary>
    [SupplyParameterFromQuery(Name = "change")]
    public string? Changes { get; set; }

    [Inject]
    private MachineRoom Room { get; set; } = null!;

    [Inject]
    private RecordingDesk Desk { get; set; } = null!;

    [Inject]
    private IJSRuntime Js { get; set; } = null!;

    private MappingDraft? Draft { get; set; }

    /// <summary>Why the file cannot be read.</summary>
    private string? Wrong { get; set; }

    private bool IsAll { get; set; }

    private MappingOffers Offers { get; set; } = new([], []);

    private RecordingMapping Mapping => Draft!.Mapping;

    private Recording? Read => Draft?.Mapped?.Recording;

    /// <summary>All but the time.</summary>
    private IReadOnlyList<(RecordingLook.Column Look, int Index)> Columns => [.. Draft!.Look.Columns.Select((c, i) => (c, i)).Where(c => c.c.Head.Length > 0 && c.c.Head != Mapping.Time).DistinctBy(c => c.c.Head)];

    /// <summary>What is wrong with the recording as a whole, or with a column that is not shown.</summary>
    private IReadOnlyList<MappingFinding> Whole => [.. (Draft!.Mapped?.Found ?? []).Where(f => f.Head is null || !Mapping.Columns.Any(c => c.Head == f.Head))];

    private string Verdict => Draft!.Mapped is not { } mapped ? Say.It("One moment …")
        : mapped.Recording?.Table is { } table ? Say.With($"The book would read it: {table.Rows} rows from {table.Labels[0]} to {table.Labels[^1]}.")
        : !Mapping.Columns.Any(c => c.IsUsed) ? Say.It("Nothing is said of any column yet.")
        : Say.Of(mapped.Found.Length, $"One thing is wrong still; it stands at its place.", $"{mapped.Found.Length} things are wrong still; each stands at its place.");

    /// <summary>Where a recording of the book is changed.</summary>
    public static string AddressOf(Recording recording) => "recordings/map/file?change=" + Uri.EscapeDataString(recording.Name);

    /// <summary>Where a file is mapped.</summary>
    public static string AddressOf(string key) => "recordings/map/file?of=" + Uri.EscapeDataString(key);

    protected override async Task OnParametersSetAsync()
    {
        (Draft, Wrong) = Changes is { } name ? Desk.Change(name) : Desk.Open(File ?? "");
        if (Draft is { } draft)
        {
            Offers = OffersOf(draft.Mapping.Train);
            await Desk.Map(draft, draft.Mapping);
        }
    }

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (firstRender)
        {
            await Script.Alive(Js);
        }
    }

    private Task SayAsync(ColumnMapping column) => SayAsync(Mapping with { Columns = [.. Mapping.Columns.Select(c => c.Head == column.Head ? column : c)] });

    private async Task SayAsync(RecordingMapping mapping)
    {
        if (mapping.Train != Mapping.Train)
        {
            Offers = OffersOf(mapping.Train);
        }

        await Desk.Map(Draft!, mapping);
    }

    /// <summary>Another column with the time: the one that was it is a column like others.</summary>
    private RecordingMapping TimeIn(string head) => Mapping with
    {
        Time = head,
        Columns = [.. Draft!.Look.Columns.Where(c => c.Head.Length > 0 && c.Head != head).DistinctBy(c => c.Head).Select(c => Said(c.Head))],
    };

    private ColumnMapping Said(string head) => Mapping.Columns.FirstOrDefault(c => c.Head == head) ?? new(head);

    private IReadOnlyList<MappingFinding> WrongOf(string head) => [.. (Draft!.Mapped?.Found ?? []).Where(f => f.Head == head)];

    private MappingOffers OffersOf(string? train) => MappingOffers.Of(Room.Shelf.BookOf(null, train));

    private static string Shown(MappingOffer offer) => offer.Words.IsEmpty ? "" : string.Join(" | ", offer.Words.Take(6).Select(Say.Word));

    private static string One(ChangeEventArgs change) => change.Value?.ToString()?.Trim() ?? "";

    private static ImmutableArray<string> Several(ChangeEventArgs change) => [.. One(change).Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)];
}
