namespace Sightglass.Plant.Calculators.Running;

/// <summary>What a brake that builds up loses against one that is there at once, as the dead time and the even build-up of <see cref="Stopping"/>.</summary>
/// <param name="Newtons">When it is full.</param>
/// <param name="DeadSeconds">Until it begins.</param>
/// <param name="BuildUpSeconds">From then, evenly, until it is full, so that as much push is lost as by the real curve.</param>
public sealed record BuildUp(double Newtons, double DeadSeconds, double BuildUpSeconds)
{
    /// <summary>Share of the full force at which it counts as begun (common practice, no source).</summary>
    private const double Begun = 0.05;

    /// <param name="curve">s and N, rising in s from 0; full at its end.</param>
    public static BuildUp Of(IReadOnlyList<(double Seconds, double Newtons)> curve)
    {
        ArgumentNullException.ThrowIfNull(curve);
        double full = curve[^1].Newtons;
        if (!(full > 0))
        {
            return new(0, 0, 0);
        }

        double dead = curve.First(p => p.Newtons >= Begun * full).Seconds, lost = 0;
        for (int i = 1; i < curve.Count; i++)
        {
            lost += (curve[i].Seconds - curve[i - 1].Seconds) * (1 - ((curve[i].Newtons + curve[i - 1].Newtons) / 2 / full));
        }

        return new(full, Math.Min(dead, lost), 2 * Math.Max(0, lost - dead));
    }
}
