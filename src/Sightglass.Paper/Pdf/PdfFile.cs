namespace Sightglass.Paper.Pdf;

/// <summary>A written PDF.</summary>
/// <param name="Bytes">The file.</param>
/// <param name="Pages">How many.</param>
/// <param name="LeastLetters">The least size of words on its drawings, pt; infinite where there is none.</param>
public sealed record PdfFile(byte[] Bytes, int Pages, double LeastLetters)
{
    /// <summary>Words on a printed drawing are no smaller, pt.</summary>
    public const double Readable = 7.5;
}
