using System.Collections.Immutable;
using System.Globalization;
using System.Security.Cryptography;
using Microsoft.AspNetCore.Components;
using Sightglass.Basics.Language;
using Sightglass.Book.Model;
using Sightglass.Web.Live;

namespace Sightglass.Web.Room.Instructor;

/// <summary>Which drill, which case, for whom.</summary>
public sealed partial class DrillSetup
{
    private readonly HashSet<int> _turned = [];
    private int[] _roles = [];
    private string? _name;
    private CaseChoice _cases;
    private string _seed = "";
    private string _case = "";
    private string? _wrong;
    private bool _busy;

    [Parameter]
    [EditorRequired]
    public TrainingRoom Room { get; set; } = null!;

    [Parameter]
    [EditorRequired]
    public BookShelf Shelf { get; set; } = null!;

    /// <summary>The drill that stands chosen at first; null for the easiest.</summary>
    [Parameter]
    public string? First { get; set; }

    /// <summary>Told when something was set up.</summary>
    [Parameter]
    [EditorRequired]
    public Action Changed { get; set; } = null!;

    /// <summary>Closes the dialog.</summary>
    [Parameter]
    [EditorRequired]
    public Func<Task> Close { get; set; } = null!;

    private ImmutableArray<Drill> Offered => Room.Offered;

    private Drill? Chosen => Offered.FirstOrDefault(d => d.Name == _name) ?? Offered.OrderBy(d => d.Level).FirstOrDefault();

    private ImmutableArray<Seat> Seats => Room.Seats;

    private ImmutableArray<PersonStart> People => Chosen is { } chosen && Shelf.Book.Situations.TryGetValue(chosen.Situation, out Situation? situation) ? situation.People : [];

    private int Judged => Enumerable.Range(0, People.Length).FirstOrDefault(i => People[i].Role == Chosen!.Role, -1);

    protected override void OnInitialized()
    {
        Draw();
        _name = First;
        Pick(Chosen);
    }

    private static string LevelWord(DrillLevel level) => level switch
    {
        DrillLevel.FirstDay => Say.It("First day"),
        DrillLevel.Qualifying => Say.As("level", "Qualifying"),
        _ => Say.It("Working"),
    };

    private static string About(Drill drill) =>
        Say.Begin(string.Join(", ", drill.IsQualifying ? Say.It("qualifying") : Say.It("practice"), Say.With($"for the {drill.Role}"), Say.With($"at most {drill.TimeLimit / 60:0} min"), drill.WithCards ? Say.It("cards in hand") : Say.It("no cards")) + ".");

    private void Pick(Drill? drill)
    {
        _name = drill?.Name;
        _roles = new int[People.Length];
        _cases = People.Length < 2 && _cases == CaseChoice.Together ? CaseChoice.Same : _cases;
    }

    private void Draw()
    {
        _seed = RandomNumberGenerator.GetInt32(1, 10_000).ToString(CultureInfo.InvariantCulture);
        _case = RandomNumberGenerator.GetInt32(0, 1_000).ToString(CultureInfo.InvariantCulture);
    }

    /// <summary>Who waits is meant, who works is not, until it is said otherwise.</summary>
    private bool IsFor(Seat seat) => SeatRows.IsWorking(seat) == _turned.Contains(seat.Number);

    private void Turn(Seat seat, bool isFor)
    {
        if (isFor == SeatRows.IsWorking(seat))
        {
            _turned.Add(seat.Number);
        }
        else
        {
            _turned.Remove(seat.Number);
        }
    }

    private async Task Begin()
    {
        if (_busy || Chosen is not { } drill)
        {
            return;
        }

        if (!ulong.TryParse(_seed, CultureInfo.InvariantCulture, out ulong seed) || !ulong.TryParse(_case, CultureInfo.InvariantCulture, out ulong number))
        {
            _wrong = Say.It("Seed and case are whole numbers from 0, such as 4471 and 12.");
            return;
        }

        (_busy, _wrong) = (true, null);
        RoomOrder order = new(drill.Name, seed, number, _cases, [.. Seats.Where(IsFor)], [.. _roles.Select(r => Seats.FirstOrDefault(s => s.Number == r))], Judged);
        Tongue tongue = Tongue.Spoken;
        _wrong = await Task.Run(() =>
        {
            using (tongue.Speak())
            {
                return order.Begin(Room);
            }
        });
        _busy = false;
        if (_wrong is null)
        {
            _turned.Clear();
            await Close();
        }

        Changed();
    }
}
