using Sightglass.Basics.Time;

namespace Sightglass.Training.Drills;

/// <summary>Something that came about in a drill.</summary>
/// <param name="At">Since the start.</param>
/// <param name="Kind">What sort.</param>
/// <param name="Number">Of the objective, must-never, order, event or hint; −1 where there is none.</param>
/// <param name="What">The item, danger or role that it is about, in the book's words; empty where there is none.</param>
/// <param name="Place">Where the trainee stood; empty on the way.</param>
public sealed record DrillNote(SimTime At, DrillNoteKind Kind, int Number = -1, string What = "", string Place = "");
