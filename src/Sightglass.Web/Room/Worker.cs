namespace Sightglass.Web.Room;

/// <summary>Somebody who works, or has worked, in a drill.</summary>
/// <param name="Seat">Their number in the room.</param>
/// <param name="Name">As they wrote it.</param>
/// <param name="Person">Which of its people they were.</param>
public sealed record Worker(int Seat, string Name, int Person);
