using System.Collections.Immutable;
using Sightglass.Basics.Language;

namespace Sightglass.Paper.Document;

/// <summary>A paper before it is written: the same for a page, a file that stands alone and a PDF.</summary>
/// <param name="Title">What a reader's window says.</param>
/// <param name="Look">What sort of paper it is.</param>
/// <param name="Blocks">In the order of reading.</param>
public sealed record PaperDocument(string Title, PaperLook Look, ImmutableArray<PaperBlock> Blocks)
{
    /// <summary>Language of its words (BCP 47).</summary>
    public string Language { get; init; } = Tongue.Spoken.Code;

    /// <summary>A class of its own in its style; empty for none.</summary>
    public string Style { get; init; } = "";

    /// <summary>Which machine, at the head of every page.</summary>
    public string Machine { get; init; } = "";

    /// <summary>The book's notice and who decides, at the foot of every page.</summary>
    public string Notice { get; init; } = "";

    /// <summary>Whether a sheet lies: its drawing is wide.</summary>
    public bool Lying { get; init; }

    /// <summary>The day it is printed; null where the paper is a page.</summary>
    public DateOnly? Printed { get; init; }
}
