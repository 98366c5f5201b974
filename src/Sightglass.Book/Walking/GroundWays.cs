using System.Collections.Immutable;
using Sightglass.Book.Model;

namespace Sightglass.Book.Walking;

/// <summary>
/// How one walks on the ground: round the outline, from each place to its two neighbours. A place strictly inside the outline, between two coupled vehicles say, is no
/// part of that ring: it is joined to the nearest place on either side, and nobody passes through it. A place of the ring that is dangerous in itself can be walked
/// round: as far as through it, out of reach of what is dangerous.
/// </summary>
public sealed class GroundWays
{
    /// <param name="book">Its outline, and its length from the frontmost face to the last.</param>
    /// <param name="places">Which stand in the order that settles ties.</param>
    public GroundWays(ClassBook book, IReadOnlyList<Place> places)
    {
        ArgumentNullException.ThrowIfNull(book);
        int[] ground = [.. Enumerable.Range(0, places.Count).Where(i => places[i].OnGround)];
        ImmutableArray<int> around = [.. ground.Where(i => !IsWithin(book, places[i].Position))];
        around = around.IsEmpty ? [.. ground] : around; // a book with no place beside the machine: those that it has are joined
        double half = book.Length / 2;
        double middle = book.Front + half;
        Ring = [.. around.OrderBy(i => Math.Atan2(places[i].Position.Y / (book.Width / 2), (places[i].Position.X - middle) / half)).ThenBy(i => i)];
        Within = [.. ground.Except(around)];
        Joints = [.. AlongRing(places), .. RoundDangers(book, places), .. Within.SelectMany(i => ToSides(places, i))];
    }

    /// <summary>Numbers of the places round the outline, in walking order.</summary>
    public ImmutableArray<int> Ring { get; }

    /// <summary>Numbers of the places at which a way can only begin or end.</summary>
    public ImmutableArray<int> Within { get; }

    /// <summary>Numbers of two places that are joined, and metres between them along the outline or square to it.</summary>
    public ImmutableArray<(int From, int To, double Metres)> Joints { get; }

    private static bool IsWithin(ClassBook book, Point3 at) => Math.Abs(at.Y) < book.Width / 2 && at.X > book.Front && at.X < book.Front + book.Length;

    private IEnumerable<(int, int, double)> AlongRing(IReadOnlyList<Place> places)
    {
        for (int i = 0; i < Ring.Length && Ring.Length > 1; i++)
        {
            (int a, int b) = (Ring[i], Ring[(i + 1) % Ring.Length]);
            yield return (a, b, Metres(places, a, b));
        }
    }

    /// <summary>The places before and after each stretch of the ring that is dangerous in itself.</summary>
    private IEnumerable<(int, int, double)> RoundDangers(ClassBook book, IReadOnlyList<Place> places)
    {
        HashSet<string> dangers = [.. book.Hazards.Values.Where(h => h.IsStanding).SelectMany(h => h.Places)];
        bool[] dangerous = [.. Ring.Select(i => dangers.Contains(places[i].Name))];
        for (int i = 0; i < Ring.Length; i++)
        {
            double metres = 0;
            for (int k = 1; k < Ring.Length && !dangerous[i]; k++)
            {
                (int before, int here) = ((i + k - 1) % Ring.Length, (i + k) % Ring.Length);
                metres += Metres(places, Ring[before], Ring[here]);
                if (!dangerous[here])
                {
                    if (k > 1)
                    {
                        yield return (Ring[i], Ring[here], metres);
                    }

                    break;
                }
            }
        }
    }

    private IEnumerable<(int, int, double)> ToSides(IReadOnlyList<Place> places, int within) =>
        Ring.Where(i => places[i].Position.Y != 0)
            .GroupBy(i => places[i].Position.Y > 0)
            .Select(side => side.MinBy(i => (Metres(places, within, i), i)))
            .Select(i => (within, i, Metres(places, within, i)));

    private static double Metres(IReadOnlyList<Place> places, int a, int b) =>
        Math.Abs(places[a].Position.X - places[b].Position.X) + Math.Abs(places[a].Position.Y - places[b].Position.Y);
}
