namespace Sightglass.Cli;

/// <summary>What the program says to the shell.</summary>
internal static class ExitCode
{
    public const int Good = 0;

    /// <summary>The answer is 'no': the book has errors, the card failed; or it was broken off before there was one.</summary>
    public const int No = 1;

    /// <summary>The program was called wrongly.</summary>
    public const int WrongUse = 2;

    /// <summary>A defect of the program.</summary>
    public const int Internal = 3;
}
