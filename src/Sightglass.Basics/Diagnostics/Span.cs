namespace Sightglass.Basics.Diagnostics;

/// <summary>A stretch of a source text: where something stands.</summary>
public readonly record struct Span(SourceText? Source, int Start, int Length) : IComparable<Span>
{
    /// <summary>No place at all: for things that the program made.</summary>
    public static readonly Span None;

    public int End => Start + Length;

    public string Path => Source?.Path ?? "";

    public int Line => Source?.Locate(Start).Line ?? 0;

    public int Column => Source?.Locate(Start).Column ?? 0;

    /// <summary>Where the text is used that this stretch is part of: <c>for `aft` at fuel.yaml:3:3</c>; empty for a text that stands for itself.</summary>
    public string Use
    {
        get
        {
            List<string> uses = [];
            for (SourceText? at = Source; at is not null && at.SeenFrom.Source is not null; at = at.SeenFrom.Source)
            {
                uses.Add($"{at.SeenAs} {at.SeenFrom}");
            }

            return string.Join(", ", uses);
        }
    }

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

    /// <summary>The order of files and lines; what is read at a use stands where the use stands.</summary>
    public int CompareTo(Span other)
    {
        return ReferenceEquals(Source, other.Source) ? Start.CompareTo(other.Start) : Compare(this, Depth(Source), other, Depth(other.Source));
    }

    /// <summary>From the outermost use inwards; of two that agree so far, the one that is used within comes later.</summary>
    private static int Compare(Span a, int depthA, Span b, int depthB)
    {
        if (depthA == 0 && depthB == 0)
        {
            return ByPlace(a, b);
        }

        int order = depthA > depthB ? Compare(a.Source!.SeenFrom, depthA - 1, b, depthB)
            : depthB > depthA ? Compare(a, depthA, b.Source!.SeenFrom, depthB - 1)
            : Compare(a.Source!.SeenFrom, depthA - 1, b.Source!.SeenFrom, depthB - 1);
        return order != 0 ? order : depthA == depthB ? ByPlace(a, b) : depthA.CompareTo(depthB);
    }

    private static int ByPlace(Span a, Span b)
    {
        int byPath = ReferenceEquals(a.Source, b.Source) ? 0 : string.CompareOrdinal(a.Path, b.Path);
        return byPath != 0 ? byPath : a.Start.CompareTo(b.Start);
    }

    /// <summary>In how many uses of others a text stands.</summary>
    private static int Depth(SourceText? source)
    {
        int depth = 0;
        for (; source?.SeenFrom.Source is { } from; source = from)
        {
            depth++;
        }

        return depth;
    }

    public static bool operator <(Span left, Span right) => left.CompareTo(right) < 0;

    public static bool operator <=(Span left, Span right) => left.CompareTo(right) <= 0;

    public static bool operator >(Span left, Span right) => left.CompareTo(right) > 0;

    public static bool operator >=(Span left, Span right) => left.CompareTo(right) >= 0;

    /// <summary><c>file:line:column</c>, or an empty text for <see cref="None"/>.</summary>
    public override string ToString() => Source is null ? "" : FormattableString.Invariant($"{Path}:{Line}:{Column}");
}
