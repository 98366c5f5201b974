namespace Sightglass.Web.Room;

/// <summary>The room's door, where there is one: for the pages that say how to come in.</summary>
/// <param name="Door">Null where nothing listens beyond this computer.</param>
public sealed record RoomKey(RoomDoor? Door);
