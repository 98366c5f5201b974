namespace Sightglass.Book.Messages;

/// <summary>What a name stands for where it is used.</summary>
internal enum NameUse
{
    Item,
    Place,
    Role,
    System,
    Protection,
    Assembly,

    /// <summary>A class of cars.</summary>
    Car,
    Train,
    Situation,
    Recording,
    RoadNumber,

    /// <summary>The file of a card, without its ending.</summary>
    Card,
    Position,
}
