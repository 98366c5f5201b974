using Sightglass.Book.Changes;
using Sightglass.Book.Model;

namespace Sightglass.Training.Drills;

/// <summary>A drill that was made of a case of a trial, before it is put into the book.</summary>
/// <param name="Drill">What it asks.</param>
/// <param name="Situation">The case it starts from.</param>
/// <param name="File">The file that brings both into the book.</param>
/// <param name="Fails">Whether the card fails in the situation as it is written as it did in the trial; where it does not, how people answered had a part in it.</param>
/// <param name="Problem">Why it cannot be used as a drill; null where it can.</param>
public sealed record CaseDrillDraft(Drill Drill, Situation Situation, NewFile File, bool Fails, string? Problem);
