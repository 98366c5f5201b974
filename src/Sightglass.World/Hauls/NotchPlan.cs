using System.Collections.Immutable;
using Sightglass.Book.Model;
using Sightglass.Plant.Calculators.Running;

namespace Sightglass.World.Hauls;

/// <summary>
/// A handle that has notches, worked so that over time as much is pulled as the run asks for: every few seconds the notch next to what is wanted, with what is still owed. No notch gives the power of
/// the run by itself, and between two of them a hand goes to and fro.
/// </summary>
/// <param name="Moves">s since the start, and the position from then on.</param>
public sealed record NotchPlan(ImmutableArray<(double Seconds, string Position)> Moves)
{
    /// <summary>s between two looks at the handle.</summary>
    public const double Every = 20;

    /// <param name="points">Of the whole run.</param>
    /// <param name="pulling">Of a machine.</param>
    /// <param name="machines">That work, each pulling alike.</param>
    /// <param name="share">Of the power by its notches that reaches the rail, where the cars take some of it; above 0.</param>
    public static NotchPlan Of(ImmutableArray<RoutePoint> points, Pulling pulling, int machines, double share)
    {
        ArgumentNullException.ThrowIfNull(pulling);
        (string Position, double Watts)[] notches = [.. pulling.Notches.Select(n => (n, pulling.Power[n] * share))];
        var moves = ImmutableArray.CreateBuilder<(double, string)>();
        double owed = 0, from = 0;
        int i = 1;
        string? at = null;
        while (i < points.Length)
        {
            // Until the end of the look the run has asked for so much work of each machine.
            for (; i < points.Length && points[i].Seconds <= from + Every; i++)
            {
                owed += points[i].Pull * (points[i].Metres - points[i - 1].Metres) / machines;
            }

            (string position, double watts) = notches.MinBy(n => Math.Abs(n.Watts - (owed / Every)));
            if (position != at)
            {
                moves.Add((from, position));
                at = position;
            }

            owed -= watts * Every;
            from += Every;
        }

        return new(moves.ToImmutable());
    }
}
