using PdfSharp.Drawing;

namespace Sightglass.Paper.Pdf;

/// <summary>What is not broken over pages: a line, a row, a box; or, without height, the beginning or the end of something in the structure.</summary>
/// <param name="Height">pt.</param>
/// <param name="Paint">Paints it into its rectangle.</param>
internal sealed record PdfPiece(double Height, Action<XRect> Paint)
{
    /// <summary>Left free before it, but not at the head of a page; pt.</summary>
    public double Space { get; init; }

    /// <summary>Stays on the page of what follows.</summary>
    public bool WithNext { get; init; }

    /// <summary>Begins a page.</summary>
    public bool NewPage { get; init; }

    /// <summary>Painted again, as furniture, where it begins a page: the heads of a table.</summary>
    public PdfPiece? Repeated { get; init; }
}
