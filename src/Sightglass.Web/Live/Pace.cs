namespace Sightglass.Web.Live;

/// <summary>How fast a live world goes; the number is simulated seconds a second.</summary>
public enum Pace
{
    Hold = 0,
    Real = 1,
    Four = 4,
    Fifteen = 15,
    Sixty = 60,
}
