namespace Sightglass.Book.Recordings;

/// <summary>What makes comma-separated text unreadable from a place on.</summary>
public enum CsvFlaw
{
    None,

    /// <summary>A quote that is opened and never closed, or not within what a field may hold.</summary>
    NotClosed,

    /// <summary>Something stands between a closing quote and the next separator.</summary>
    AfterQuote,

    /// <summary>A field longer than <see cref="CsvScanner.MostCharacters"/>.</summary>
    TooLong,

    /// <summary>More fields in a row than <see cref="CsvScanner.MostFields"/>.</summary>
    TooManyFields,
}
