namespace Sightglass.World.Hauls;

/// <summary>What somebody says of a run.</summary>
public enum HaulInput
{
    /// <summary>A train of the book.</summary>
    Train,

    /// <summary>The machine whose modifications apply.</summary>
    RoadNumber,

    /// <summary>How the rail is.</summary>
    Rail,

    /// <summary>Machines that do not work.</summary>
    Dead,

    /// <summary>What the cars take.</summary>
    HeadEnd,

    /// <summary>How full every compartment is.</summary>
    Fill,

    /// <summary>What is otherwise at the start.</summary>
    Sets,

    /// <summary>What is kept back of the fuel.</summary>
    Margin,

    /// <summary>Where it is stopped on trial.</summary>
    StopsAt,
}
