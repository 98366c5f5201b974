namespace Sightglass.Book.Model;

public enum Side
{
    Right,
    Rear,
    Left,
    Front,
}
