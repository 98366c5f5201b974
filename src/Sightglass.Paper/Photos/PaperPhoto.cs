using System.Collections.Immutable;
using Sightglass.Paper.Document;

namespace Sightglass.Paper.Photos;

/// <summary>A picture of the machine on a paper.</summary>
/// <param name="File">What is shown.</param>
/// <param name="Address">Where a page that is served finds it.</param>
/// <param name="Name">What it is called, and on which machines it looks so.</param>
/// <param name="Alt">For those who cannot see it.</param>
/// <param name="Marks">What is told by number in it.</param>
public sealed record PaperPhoto(PhotoFile File, string Address, string Name, string Alt, ImmutableArray<PhotoMark> Marks)
{
    /// <summary>Its name, and what the numbers stand for.</summary>
    public PaperText Caption => Marks.Aggregate(PaperText.Strong(Name + "."), (text, mark) => text.And($" {Papers.PaperWords.Number(mark.Number)}\u00A0", RunStyle.Strong).And(mark.Name + (mark.Number < Marks.Length ? "," : ".")));
}
