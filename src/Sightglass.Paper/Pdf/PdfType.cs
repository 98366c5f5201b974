using Sightglass.Paper.Document;

namespace Sightglass.Paper.Pdf;

/// <summary>Sizes of type on a paper, pt.</summary>
/// <param name="Title">Of the paper.</param>
/// <param name="Section">Of a section.</param>
/// <param name="Part">Of a part of one.</param>
/// <param name="Lead">The opening sentence.</param>
/// <param name="Body">Reading.</param>
/// <param name="Small">Labels, tables, captions, furniture.</param>
internal sealed record PdfType(double Title, double Section, double Part, double Lead, double Body, double Small)
{
    /// <summary>From line to line, in sizes.</summary>
    public const double Leading = 1.36;

    /// <summary>Print's least is 7.5 pt; large print begins at 18.</summary>
    public static PdfType Of(PaperLook look, bool large) => large ? new(32, 25, 21, 20, 18, 18) : look switch
    {
        PaperLook.Pocket => new(13.5, 10.5, 9.5, 9, 8.8, 7.6),
        PaperLook.Dense => new(17, 10.5, 9.5, 9.6, 8.6, 7.6),
        PaperLook.Poster => new(26, 16, 13, 13, 11, 9.5),
        _ => new(24, 15, 12, 12.5, 10.2, 8.8),
    };

    /// <summary>Words under a drawing, pt.</summary>
    public double Caption => Math.Max(Small, Body * 0.94);

    /// <summary>Between blocks, pt.</summary>
    public double Gap => Body * 0.55;
}
