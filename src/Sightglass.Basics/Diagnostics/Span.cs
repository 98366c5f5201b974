namespace Sightglass.Basics.Diagnostics;

/// <summary>A stretch of a source text: where something stands.</summary>
public readonly record struct Span(SourceText? Source, int Start, int Length)
{
    /// <summary>No place at all: for things that the program made.</summary>
    public static readonly Span None;

    public int End => Start + Length;

    public string Path => Source?.Path ?? "";

    public int Line => Source?.Locate(Start).Line ?? 0;

    public int Column => Source?.Locate(Start).Column ?? 0;

    public string Text => Source is null ? "" : Source.Text.Substring(Start, Math.Min(Length, Source.Text.Length - Start));

    /// <summary>
    /// A stretch inside this one, by offsets into the text that was read from it; the whole where that text is not
    /// this stretch letter by letter (quoted or folded in its file).
    /// </summary>
    public Span Slice(string text, int start, int length)
    {
        ArgumentNullException.ThrowIfNull(text);
        bool same = Source is not null && Start >= 0 && End <= Source.Text.Length
            && Source.Text.AsSpan(Start, Length).SequenceEqual(text);
        return same ? new(Source, Start + start, length) : this;
    }

    /// <summary><c>file:line:column</c>, or an empty text for <see cref="None"/>.</summary>
    public override string ToString() => Source is null ? "" : FormattableString.Invariant($"{Path}:{Line}:{Column}");
}
