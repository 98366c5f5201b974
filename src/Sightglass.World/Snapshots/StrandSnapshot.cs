using Sightglass.Cards.Sentences;

namespace Sightglass.World.Snapshots;

/// <summary>How far one person of a card has come.</summary>
public sealed record StrandSnapshot(bool Active, int Next, bool Halfway, int Actor, string HeldFrom, double AnswersAfter, int Question = 0, Reply Reply = Reply.None);
