namespace Sightglass.Cards.Programs;

/// <summary>One word a letter may stand for, with what must be seen for it; null when the caller decides.</summary>
public sealed record BindingCase(string Variable, string Word, Condition? When);
