using System.Collections.Immutable;

namespace Sightglass.Paper.Document;

/// <summary>A text of runs, read one after the other.</summary>
public sealed record PaperText(ImmutableArray<PaperRun> Runs)
{
    public static readonly PaperText Empty = new([]);

    public static implicit operator PaperText(string text) => new([new PaperRun(text)]);

    /// <summary>The words without their styles.</summary>
    public string Plain => string.Concat(Runs.Select(r => r.Text));

    public static PaperText Strong(string text) => new([new PaperRun(text, RunStyle.Strong)]);

    /// <summary>The words of a card.</summary>
    public static PaperText OfCard(string text) => new([new PaperRun(text) { Verbatim = true }]);

    /// <summary>This text and more of it.</summary>
    public PaperText And(string text, RunStyle style = RunStyle.Plain) => text.Length == 0 ? this : new(Runs.Add(new PaperRun(text, style)));
}
