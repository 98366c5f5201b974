namespace Sightglass.Paper.Document;

/// <summary>In which units a paper says quantities.</summary>
public enum PaperUnits
{
    /// <summary>As the book has them.</summary>
    Book,

    /// <summary>US customary units in brackets after every quantity in other units.</summary>
    Us,

    /// <summary>SI units in brackets after every quantity in other units.</summary>
    Si,
}
