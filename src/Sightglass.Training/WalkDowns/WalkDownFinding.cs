using Sightglass.Training.Pictures;

namespace Sightglass.Training.WalkDowns;

/// <summary>One entry of a result as the phone sent it, checked.</summary>
/// <param name="Marks">JSON as <see cref="WalkDownEntry.Marks"/> has it; null where there are none.</param>
public sealed record WalkDownFinding(Guid Id, int Revision, string Place, string? Item, FoundState State, string Label, string OpensTowards, string Note, string? Marks, PictureFile? Photo, VoiceFile? Voice, string By, DateTimeOffset At);
