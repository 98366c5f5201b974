using Microsoft.AspNetCore.Components;
using Sightglass.Book.Model;
using Sightglass.Web.Live;
using Sightglass.Web.Machine;

namespace Sightglass.Web.Room.Instructor;

/// <summary>The truth of one system in the world of a drill, drawn.</summary>
public sealed partial class SeatDiagram
{
    /// <summary>A drawing is large: while it is open it is made anew no sooner than this.</summary>
    private static readonly TimeSpan s_least = TimeSpan.FromSeconds(1);

    private Sampler? _sampler;
    private MachineChoice _choice = new(null, null);
    private MachineDrawing? _drawing;
    private string _drawn = "";
    private long _at;
    private bool _isOpen;

    [Parameter]
    [EditorRequired]
    public DrillSession Session { get; set; } = null!;

    [Inject]
    private TimeProvider Clock { get; set; } = null!;

    private ClassBook Book => Session.Plan.Book;

    protected override void OnParametersSet()
    {
        if (_isOpen && Clock.GetElapsedTime(_at) >= s_least)
        {
            Draw();
        }
    }

    private void Turn()
    {
        _isOpen = !_isOpen;
        if (!_isOpen)
        {
            return;
        }

        if (_sampler is null)
        {
            _sampler = new(Session.Plan);
            _choice = MachineChoice.Of(Book, Session.Start.Situation, null, null);
        }

        Draw();
    }

    private void Show(string? system, string? vehicle)
    {
        _choice = MachineChoice.Of(Book, Session.Start.Situation, system, vehicle);
        Draw();
    }

    private void Draw()
    {
        try
        {
            MachineSnapshot seen = Session.Ask(w => _sampler!.Look(w, _sampler.Empty));
            _drawing = MachineDrawing.Of(Session.Plan, _choice, seen, truth: true);
            _drawn = _drawing.IsEmpty ? "" : _drawing.Render(seen, truth: true, operated: false);
            _at = Clock.GetTimestamp();
        }
        catch (ObjectDisposedException)
        {
            // The drill is gone: the last picture stays.
        }
    }
}
