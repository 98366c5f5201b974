namespace Sightglass.World.Hauls;

/// <summary>What somebody says of a run.</summary>
public enum HaulInput
{
    Train,
    RoadNumber,
    Rail,
    Dead,
    HeadEnd,
    Fill,
    Sets,
    Margin,
    StopsAt,
}
