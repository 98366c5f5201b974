namespace Sightglass.Book.Model;

/// <summary>A form of train resistance by what it was made for.</summary>
public enum ResistanceSort
{
    /// <summary>The form of 1926 for passenger cars.</summary>
    Passenger,

    /// <summary>The same for locomotives.</summary>
    Locomotive,

    /// <summary>The same for freight cars.</summary>
    Freight,

    /// <summary>The modified form.</summary>
    Modified,
}
