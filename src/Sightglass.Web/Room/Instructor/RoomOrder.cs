using System.Collections.Immutable;
using Sightglass.Basics.Language;

namespace Sightglass.Web.Room.Instructor;

/// <summary>What an instructor asks to be set up.</summary>
/// <param name="Drill">Its name in the book.</param>
/// <param name="Seed">Of the draws.</param>
/// <param name="Case">The first case.</param>
/// <param name="Cases">How cases are given to several people.</param>
/// <param name="Seats">For whom, where each has a world of their own.</param>
/// <param name="Roles">Who plays each of the situation's people, where all are in one world; null: nobody.</param>
/// <param name="Judged">Which of them is judged.</param>
public sealed record RoomOrder(string Drill, ulong Seed, ulong Case, CaseChoice Cases, ImmutableArray<Seat> Seats, ImmutableArray<Seat?> Roles, int Judged)
{
    /// <summary>Sets it up, held.</summary>
    /// <returns>Null, or why not.</returns>
    public string? Begin(TrainingRoom room)
    {
        ArgumentNullException.ThrowIfNull(room);
        if (Cases == CaseChoice.Together)
        {
            return Together(room);
        }

        if (Seats.IsEmpty)
        {
            return Say.It("Say for whom: choose somebody of those who are here.");
        }

        foreach ((int i, Seat seat) in Seats.Index())
        {
            if (room.Begin(Drill, Seed, Cases == CaseChoice.Own ? Case + (ulong)i : Case, [seat]) is { } trouble)
            {
                return Say.With($"{seat.Name}: {trouble}");
            }
        }

        return null;
    }

    private string? Together(TrainingRoom room)
    {
        if (Judged < 0 || Judged >= Roles.Length || Roles[Judged] is not { } first)
        {
            return Say.It("Say who plays the one who is judged.");
        }

        if (Roles.OfType<Seat>().GroupBy(s => s.Number).FirstOrDefault(g => g.Count() > 1) is { } twice)
        {
            return Say.With($"{twice.First().Name} can be only one of them.");
        }

        string? trouble = room.Begin(Drill, Seed, Case, [first]);
        for (int i = 0; i < Roles.Length && trouble is null; i++)
        {
            trouble = i != Judged && Roles[i] is { } other ? Leave(room, other) ?? room.JoinLate(other, first.Drill!, i) : null;
        }

        return trouble;
    }

    /// <summary>Ends what somebody works in, where nobody else does.</summary>
    private static string? Leave(TrainingRoom room, Seat seat) =>
        seat.Drill is { Ended: null } drill && room.Seats.All(s => s == seat || s.Drill != drill) ? room.End(drill) : null;
}
