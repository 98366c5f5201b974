namespace Sightglass.Web.Live;

/// <summary>How fast a live world goes; the number is simulated half seconds a second.</summary>
public enum Pace
{
    Hold = 0,
    Half = 1,
    Real = 2,
    Four = 8,
    Fifteen = 30,
    Sixty = 120,
}
