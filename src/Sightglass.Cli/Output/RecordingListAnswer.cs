namespace Sightglass.Cli.Output;

/// <summary>What <c>recording --json</c> answers.</summary>
internal sealed record RecordingListAnswer(string Book, string Notice, IReadOnlyList<RecordingListAnswer.Row> Recordings)
{
    /// <param name="Situations">That draw from it.</param>
    internal sealed record Row(string Name, string Text, string File, int Rows, string From, string To, IReadOnlyList<string> Situations);
}
