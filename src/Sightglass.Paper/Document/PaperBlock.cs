using System.Collections.Immutable;
using Sightglass.Book.Model;
using Sightglass.Paper.Photos;

namespace Sightglass.Paper.Document;

/// <summary>One block of a paper, in the order of reading.</summary>
public abstract record PaperBlock
{
    /// <param name="Level">1 the title of the paper, 2 a section, 3 a part of one.</param>
    public sealed record Heading(int Level, PaperText Text) : PaperBlock
    {
        /// <summary>The number of a stop, before the words; null for none.</summary>
        public string? Number { get; init; }

        /// <summary>Few words at the end of the line; null for none.</summary>
        public string? Aside { get; init; }
    }

    public sealed record Paragraph(PaperText Text, ParagraphSort Sort = ParagraphSort.Body) : PaperBlock
    {
        /// <summary>A word in the margin that says what to do with it: <c>Show</c>, <c>Ask</c>; null for none.</summary>
        public string? Tag { get; init; }
    }

    /// <summary>A list without numbers.</summary>
    public sealed record Bullets(ImmutableArray<PaperText> Lines) : PaperBlock;

    /// <summary>Things to tick with a pen.</summary>
    public sealed record Ticks(ImmutableArray<PaperText> Lines) : PaperBlock;

    /// <summary>Numbered steps with what stands between them.</summary>
    public sealed record Steps(ImmutableArray<StepLine> Lines) : PaperBlock;

    /// <param name="Heads">What the columns hold.</param>
    /// <param name="Rows">As many cells as heads; an empty row is one to write into.</param>
    public sealed record Table(ImmutableArray<string> Heads, ImmutableArray<ImmutableArray<PaperText>> Rows) : PaperBlock
    {
        /// <summary>Shares of the width, as many as heads; equal where empty.</summary>
        public ImmutableArray<double> Widths { get; init; } = [];

        /// <summary>Whether the first cell of a row says what the row is about.</summary>
        public bool RowHeads { get; init; }
    }

    /// <summary>A caution with its signal word.</summary>
    public sealed record Notice(SignalWord Word, PaperText Text) : PaperBlock;

    /// <param name="Svg">Without style of its own: classes of the look.</param>
    /// <param name="Alt">What it shows, for people who cannot see it.</param>
    public sealed record Picture(string Svg, string Alt) : PaperBlock
    {
        /// <summary>Words under it, after its bold first word; empty for none.</summary>
        public PaperText Caption { get; init; } = PaperText.Empty;

        /// <summary>The most of a page's height that it takes, 0…1.</summary>
        public double MostHeight { get; init; } = 0.6;

        /// <summary>Points a pixel of the drawing; null where it is as wide as there is room.</summary>
        public double? Scale { get; init; }
    }

    /// <summary>Photographs side by side where there is room, each with what its marks mean.</summary>
    /// <param name="Row">One or more.</param>
    public sealed record Photos(ImmutableArray<PaperPhoto> Row) : PaperBlock
    {
        /// <summary>Whether words stand beside their photograph also where several are in the row.</summary>
        public bool Beside { get; init; }
    }

    /// <summary>An address for a phone.</summary>
    /// <param name="Address">With its scheme.</param>
    /// <param name="Says">What is found there.</param>
    public sealed record Code(string Address, string Says) : PaperBlock
    {
        private const int LongestTyped = 90;

        /// <summary>What is written beside it: the address, and of one that nobody would type its beginning.</summary>
        public string Shown => Address.Length <= LongestTyped ? Address : Address.Split('?')[0] + "?…";
    }

    /// <summary>Blocks in a frame: the stamp of a card.</summary>
    public sealed record Box(ImmutableArray<PaperBlock> Blocks) : PaperBlock;

    /// <summary>Two columns where there is room, else one after the other.</summary>
    public sealed record Columns(ImmutableArray<PaperBlock> Left, ImmutableArray<PaperBlock> Right) : PaperBlock;

    /// <summary>What follows begins a page.</summary>
    public sealed record PageBreak : PaperBlock;
}
