using System.Collections.Immutable;
using Sightglass.Web.Live;

namespace Sightglass.Web.Room;

/// <summary>The one clock of the room: what drives its drills, and what holds them.</summary>
public sealed partial class TrainingRoom
{
    /// <summary>Holds everybody, or lets everybody go.</summary>
    public void HoldAll(bool hold)
    {
        IsHeld = hold;
        foreach (DrillSession session in _living.Select(d => d.Session!))
        {
            if (hold)
            {
                session.Hold(HoldReason.All);
            }
            else
            {
                session.Release(HoldReason.All);
            }
        }

        Changed?.Invoke();
    }

    /// <summary>A page of somebody is open until what is returned is disposed of.</summary>
    public IDisposable Open(Seat seat)
    {
        ArgumentNullException.ThrowIfNull(seat);
        lock (_gate)
        {
            seat.Pages++;
            seat.LostAt = null;
            Presence(seat.Drill);
        }

        Changed?.Invoke();
        return new OpenPage(this, seat);
    }

    /// <summary>Whether the pages of all who work in a drill are there.</summary>
    private void Presence(RoomDrill? drill)
    {
        if (drill?.Session is not { } session)
        {
            return;
        }

        DateTimeOffset now = _clock.GetUtcNow();
        ImmutableArray<Seat> there = drill.Seats;
        session.Watched = [.. there.Where(s => s.IsThere).Select(s => s.Person)];
        bool isWhole = there.All(s => s.IsThere), isLost = there.Any(s => !s.IsThere && now - (s.LostAt ?? DateTimeOffset.MinValue) >= s_away);
        if (isWhole)
        {
            session.Release(HoldReason.Lost);
        }
        else if (isLost)
        {
            session.Hold(HoldReason.Lost);
        }

        drill.MayChange = !isWhole && !isLost;
    }

    private Metre MetreOf(int number) => _metres[number % Metre.Phases];

    /// <summary>Beats what is due since the last call, each for the moment at which it was due. A drill whose last beat still works leaves this one out; the next makes up for it.</summary>
    private void Beat()
    {
        List<RoomDrill> due = [];
        long wall = _clock.GetTimestamp();
        lock (_beatGate)
        {
            long step = (long)(_clock.GetElapsedTime(_origin, wall) / Metre.Step);
            long first = Math.Max(_beaten + 1, step - Metre.Phases + 1);
            _beaten = Math.Max(_beaten, step);
            if (first <= step)
            {
                due.AddRange(_living.Where(d => (((d.Number - first) % Metre.Phases) + Metre.Phases) % Metre.Phases <= step - first));
            }
        }

        try
        {
            if (due.Count > 0)
            {
                Parallel.ForEach(due, drill => Beat(drill, wall));
            }
        }
        catch (AggregateException e) when (e.InnerExceptions.All(x => x is ObjectDisposedException))
        {
            // The program ends.
        }
    }

    private void Beat(RoomDrill drill, long wall)
    {
        if (Interlocked.Exchange(ref drill.Beating, 1) != 0)
        {
            return;
        }

        try
        {
            if (drill.MayChange)
            {
                lock (_gate)
                {
                    Presence(drill);
                }
            }

            if (drill.Session is { } session && session.Beat(MetreOf(drill.Number).Last(wall)))
            {
                _ = End(drill);
            }
        }
        finally
        {
            Volatile.Write(ref drill.Beating, 0);
        }
    }

    private sealed class OpenPage(TrainingRoom room, Seat seat) : IDisposable
    {
        private int _closed;

        public void Dispose()
        {
            if (Interlocked.Exchange(ref _closed, 1) != 0)
            {
                return;
            }

            lock (room._gate)
            {
                seat.Pages--;
                seat.LostAt = seat.IsThere ? null : room._clock.GetUtcNow();
                seat.Drill?.MayChange = true;
            }

            room.Changed?.Invoke();
        }
    }
}
