namespace Sightglass.Network.Laws.Liquid.Ends;

/// <summary>What stands at one end of a path.</summary>
public struct LiquidEnd<T>
    where T : struct
{
    /// <summary>Pa absolute at the mouth; follows the first potential only.</summary>
    public T Pressure;

    public T PressureSlope;

    /// <summary>Share of the liquid in what would be drawn in here, 0…1.</summary>
    public EndContent<T> Wet;

    /// <summary>Air in what would be drawn in here, as its density times RT: partial pressure [Pa] spread over the whole volume.</summary>
    public EndContent<T> Air;
}
