using System.Collections.Immutable;

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
        Seat[] there = [.. _seats.Values.Where(s => s.Drill == drill)];
        session.Watched = [.. there.Where(s => s.IsThere).Select(s => s.Person)];
        if (there.All(s => s.IsThere))
        {
            session.Release(HoldReason.Lost);
        }
        else if (there.Any(s => !s.IsThere && now - (s.LostAt ?? DateTimeOffset.MinValue) >= s_away))
        {
            session.Hold(HoldReason.Lost);
        }
    }

    private void Beat()
    {
        if (Interlocked.Exchange(ref _beating, 1) != 0)
        {
            return; // a beat that comes while the last one still works is left out
        }

        try
        {
            ImmutableArray<RoomDrill> living = _living;
            foreach (RoomDrill drill in living)
            {
                lock (_gate)
                {
                    Presence(drill);
                }
            }

            Parallel.ForEach(living, drill =>
            {
                if (drill.Session is { } session && session.Beat())
                {
                    _ = End(drill);
                }
            });
        }
        catch (AggregateException e) when (e.InnerExceptions.All(x => x is ObjectDisposedException))
        {
            // The program ends.
        }
        finally
        {
            Volatile.Write(ref _beating, 0);
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
            }

            room.Changed?.Invoke();
        }
    }
}
