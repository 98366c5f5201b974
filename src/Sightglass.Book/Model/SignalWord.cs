namespace Sightglass.Book.Model;

/// <summary>Signal words in the sense of ANSI Z535 (from memory).</summary>
public enum SignalWord
{
    Notice,
    Caution,
    Warning,
    Danger,
}
