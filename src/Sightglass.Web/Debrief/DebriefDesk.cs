using System.Collections.Immutable;
using Sightglass.Basics.Language;
using Sightglass.Basics.Time;
using Sightglass.Training.Debrief;
using Sightglass.Training.Drills;
using Sightglass.Web.Live;
using Sightglass.Web.Room;
using Sightglass.World.Records;

namespace Sightglass.Web.Debrief;

/// <summary>
/// Runs the records of the room's drills again to look at them: one after the other, off everybody's page, so that living drills are not kept waiting. What was run last is kept.
/// </summary>
/// <param name="room">Whose drills they are.</param>
public sealed class DebriefDesk(TrainingRoom room) : IDisposable
{
    /// <summary>So many are kept: a group that talks over its evening.</summary>
    private const int Kept = 4;

    private readonly OneByOne _one = new();
    private readonly List<(string Record, long End, int Lines, DebriefFilm Film)> _films = [];

    /// <summary>A drill of the room by its number; null where there is none.</summary>
    public RoomDrill? Find(int number) => room.Drills.FirstOrDefault(d => d.Number == number);

    /// <summary>What came of a drill, or of as much of it as there is.</summary>
    /// <returns>Null with the reason where its record cannot be run again.</returns>
    public async Task<(DebriefFilm? Film, string? Why)> Of(RoomDrill drill, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(drill);
        if (Ready(drill, out BoundDrill? bound, out SessionRecord? record) is { } why)
        {
            return (null, why);
        }

        return await _one.Do<(DebriefFilm?, string?)>(
            () =>
            {
                if (_films.FirstOrDefault(f => f.Record == drill.Record && f.End == record!.End && f.Lines == record.Lines.Length).Film is { } kept)
                {
                    return (kept, null);
                }

                DebriefFilm film = DebriefReplay.Run(bound!, record!, cancel);
                _films.RemoveAll(f => f.Record == drill.Record);
                _films.Add((drill.Record, record!.End, record.Lines.Length, film));
                _films.RemoveRange(0, Math.Max(0, _films.Count - Kept));
                return (film, null);
            },
            cancel);
    }

    /// <summary>One moment of it exactly; null where its record cannot be run again.</summary>
    public async Task<DebriefMoment?> At(RoomDrill drill, SimTime at, CancellationToken cancel) =>
        Ready(drill, out BoundDrill? bound, out SessionRecord? record) is null ? await _one.Do(() => DebriefReplay.At(bound!, record!, at, cancel), cancel) : null;

    /// <summary>How it would have gone another way; null where its record cannot be run again.</summary>
    public async Task<WhatIfResult?> WhatIf(RoomDrill drill, WhatIfAsk ask, IProgress<SimTime>? told, CancellationToken cancel) =>
        Ready(drill, out BoundDrill? bound, out SessionRecord? record) is null ? await _one.Do(() => Training.Debrief.WhatIf.Run(bound!, record!, ask, told, cancel), cancel) : null;

    /// <summary>Cards that the trainee might have worked by.</summary>
    public async Task<ImmutableArray<WhatIfCard>> Cards(BoundDrill drill, CancellationToken cancel) => await _one.Do(() => WhatIfCard.Of(drill), cancel);

    public void Dispose() => _one.Dispose();

    private string? Ready(RoomDrill drill, out BoundDrill? bound, out SessionRecord? record)
    {
        bound = drill.Drill;
        record = bound is null ? null : room.RecordOf(drill);
        return bound is null ? Say.It("It was worked by another state of the book, and can be run again by that one alone. Its record is kept.")
            : record is null ? Say.It("Its record is not kept, or cannot be read.")
            : null;
    }
}
