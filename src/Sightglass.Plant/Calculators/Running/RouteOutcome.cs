namespace Sightglass.Plant.Calculators.Running;

/// <summary>How a run over a route ended.</summary>
public enum RouteOutcome
{
    /// <summary>It stands at the end.</summary>
    Arrived,

    /// <summary>It came to a stand before, or never started: what pulls is less than what resists.</summary>
    Stalled,

    /// <summary>Downhill its brakes do not hold it at the limit, or not before the end.</summary>
    RanAway,
}
