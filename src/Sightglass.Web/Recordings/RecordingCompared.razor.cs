using Microsoft.AspNetCore.Components;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Model;
using Sightglass.Book.Recordings;
using Sightglass.Trials.Recordings;

namespace Sightglass.Web.Recordings;

/// <summary>A recording beside the machine: what is asked, how far it is, what came of it.</summary>
public sealed partial class RecordingCompared
{
    private static readonly int[] s_rows = [8, 24, 60, 200];

    private static readonly int[] s_after = [2, 20, 60, 300];

    private static readonly TimeSpan s_look = TimeSpan.FromMilliseconds(300);

    /// <summary>The comparison that was asked for last; null where none was.</summary>
    [Parameter]
    public RecordingWork? Work { get; set; }

    /// <summary>Situations that tell what the recording does not.</summary>
    [Parameter]
    public IReadOnlyList<Situation> Situations { get; set; } = [];

    /// <summary>Whether it cannot be asked for: something is wrong with the mapping.</summary>
    [Parameter]
    public bool IsRefused { get; set; }

    /// <summary>Begins a comparison; what it gives is <see cref="Work"/> from then on.</summary>
    [Parameter, EditorRequired]
    public Func<CompareAsk, RecordingWork> Begin { get; set; } = null!;

    [Inject]
    private TimeProvider Clock { get; set; } = null!;

    private string? Situation { get; set; }

    private int Rows { get; set; } = s_rows[1];

    private int After { get; set; } = s_after[0];

    /// <summary>What is shown: that which was begun here is there before the page around is drawn anew.</summary>
    private RecordingWork? Shown { get; set; }

    private bool IsRunning => Shown is { IsOver: false };

    protected override void OnParametersSet()
    {
        Shown = Work;
        Situation ??= Situations is [{ Name: var first }, ..] ? first : "";
    }

    protected override Task OnAfterRenderAsync(bool firstRender) => firstRender ? WatchAsync() : Task.CompletedTask;

    private async Task BeginAsync()
    {
        if (!IsRunning && !IsRefused)
        {
            Shown = Begin(new(Situation ?? "", Rows, After));
            await WatchAsync();
        }
    }

    private async Task WatchAsync()
    {
        while (IsRunning)
        {
            StateHasChanged();
            await Task.Delay(s_look, Clock);
        }

        StateHasChanged();
    }

    /// <summary>To a hundredth of the unit.</summary>
    private static string Difference(ColumnApart apart, double si)
    {
        Unit unit = ColumnMapping.Difference(apart.Comparison.Column.Unit!);
        return double.IsNaN(si) ? "–" : QuantityFormat.Text(si, unit, unit.Factor / 100);
    }
}
