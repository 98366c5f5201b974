using Sightglass.Book.Model;

namespace Sightglass.Paper.Document;

/// <summary>A line among numbered steps.</summary>
public abstract record StepLine(PaperText Text)
{
    /// <param name="Label">Its number as written.</param>
    public sealed record Step(string Label, PaperText Text) : StepLine(Text);

    /// <summary>One of a list under a step.</summary>
    public sealed record Item(PaperText Text) : StepLine(Text);

    /// <summary>A caution before the step it belongs to.</summary>
    public sealed record Notice(SignalWord Word, PaperText Text) : StepLine(Text);
}
