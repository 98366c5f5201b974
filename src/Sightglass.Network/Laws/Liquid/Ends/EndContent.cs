namespace Sightglass.Network.Laws.Liquid.Ends;

/// <summary>How much of something is in what would be drawn in at an end, with slopes by the end's first and second potential.</summary>
public struct EndContent<T>
    where T : struct
{
    public T Value;

    public T Slope;

    public T SecondSlope;
}
