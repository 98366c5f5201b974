using PdfSharp.Fonts;

namespace Sightglass.Paper.Pdf;

/// <summary>Hands the library the two typefaces inside this assembly, and no font of the machine: a paper looks the same everywhere.</summary>
internal sealed class PaperFontFiles : IFontResolver
{
    public byte[] GetFont(string faceName)
    {
        using Stream file = PaperFiles.Open($"fonts/{faceName}.ttf") ?? throw new ArgumentException($"There is no face `{faceName}`.", nameof(faceName));
        byte[] bytes = new byte[file.Length];
        file.ReadExactly(bytes);
        return bytes;
    }

    /// <summary>Every face is a family of its own.</summary>
    public FontResolverInfo ResolveTypeface(string familyName, bool bold, bool italic) => new(familyName);
}
