using System.Collections.Immutable;
using Microsoft.AspNetCore.Components;
using Sightglass.Basics.Language;
using Sightglass.Basics.Time;
using Sightglass.Training.Debrief;
using Sightglass.Training.Evaluation;
using Sightglass.Web.Room;

namespace Sightglass.Web.Debrief;

/// <summary>Asks how a drill would have gone another way from the moment that is shown, and says how the sheet would differ.</summary>
public sealed partial class WhatIfView : IDisposable
{
    private const string Nothing = "-nothing";
    private const string Acts = "-acts";
    private const double Quarter = 900;

    private readonly CancellationTokenSource _gone = new();
    private readonly List<WhatIfAct> _acts = [];
    private ImmutableArray<WhatIfCard> _cards = [];
    private string _way = Nothing;
    private WhatIfDeed _does = WhatIfDeed.Walk;
    private string _on = "";
    private string _to = "";
    private string _said = "";
    private long _far;
    private CancellationTokenSource? _stop;
    private (WhatIfResult Result, SimTime Asked, string Said)? _came;

    [Parameter]
    [EditorRequired]
    public RoomDrill Drill { get; set; } = null!;

    [Parameter]
    [EditorRequired]
    public DebriefFilm Film { get; set; } = null!;

    /// <summary>The moment that is shown; null while what is shown is no record.</summary>
    [Parameter]
    public SimTime? From { get; set; }

    /// <summary>Somebody wants to look at what would have been.</summary>
    [Parameter]
    public EventCallback<(WhatIfResult Result, string Said)> Came { get; set; }

    [Inject]
    private DebriefDesk Desk { get; set; } = null!;

    private string On => WhatIfWords.Choices(Film.Drill, _does).Contains(_on) ? _on : WhatIfWords.Choices(Film.Drill, _does).FirstOrDefault("");

    private IEnumerable<string> Positions => WhatIfWords.Positions(Film.Drill, On);

    private string To => Positions.Contains(_to) ? _to : Positions.FirstOrDefault("");

    private string Said => _way == Nothing ? Say.It("nothing more is done") : _way == Acts ? string.Join(", ", _acts.Select(WhatIfWords.Of)) : Say.With($"by the card “{_cards.First(c => c.Name == _way).Title}”");

    public void Dispose()
    {
        _gone.Cancel();
        _gone.Dispose();
        _stop?.Dispose();
    }

    protected override async Task OnInitializedAsync()
    {
        try
        {
            _cards = await Desk.Cards(Film.Drill, _gone.Token);
            _way = _cards.FirstOrDefault(c => c.Solves)?.Name ?? Nothing;
        }
        catch (OperationCanceledException)
        {
            // The page is gone.
        }
    }

    private IEnumerable<(EvaluationLine? Before, EvaluationLine? Now)> Different(WhatIfResult result) => result.Beside(Film.Result.Sheet).Where(p => p.Before?.IsMet != p.Now?.IsMet || p.Before?.Shown != p.Now?.Shown);

    private void ChooseWay(ChangeEventArgs change) => _way = change.Value?.ToString() ?? Nothing;

    private void Add() => _acts.Add(WhatIfWords.Make(Film.Drill, _does, On, To));

    private async Task Run(SimTime from)
    {
        if (_stop is not null)
        {
            return;
        }

        string said = Said;
        ImmutableArray<WhatIfAct> acts = _way == Acts ? [.. _acts] : [];
        WhatIfAsk ask = new(from, _cards.FirstOrDefault(c => c.Name == _way)?.Programs ?? [], acts);
        using CancellationTokenSource stop = CancellationTokenSource.CreateLinkedTokenSource(_gone.Token);
        (_stop, _came, _said) = (stop, null, Say.It("It is run: what was, and from there on the other way …"));
        StateHasChanged();
        try
        {
            WhatIfResult? result = await Desk.WhatIf(Drill, ask, new Progress<SimTime>(Far), stop.Token);
            _came = result is null ? null : (result, from, said);
            _said = result is null ? Say.It("Its record cannot be run again.") : "";
        }
        catch (OperationCanceledException)
        {
            _said = Say.It("Stopped.");
        }
        finally
        {
            _stop = null;
        }
    }

    /// <summary>Says how far it has come, once a simulated quarter of an hour.</summary>
    private void Far(SimTime at)
    {
        long quarter = (long)(at.Seconds / Quarter);
        if (quarter != _far && _stop is not null)
        {
            (_far, _said) = (quarter, Say.With($"It is run: at {new ClockWords(at)} …"));
            _ = InvokeAsync(StateHasChanged);
        }
    }

    private static void Pick(ChangeEventArgs change, ref WhatIfDeed does, ref string on, ref string to)
    {
        if (Enum.TryParse(change.Value?.ToString(), out WhatIfDeed deed))
        {
            (does, on, to) = (deed, "", "");
        }
    }
}
