namespace Sightglass.Book.Model;

/// <summary>The order in which cautions are told.</summary>
public static class Cautions
{
    /// <summary>The gravest first, those as grave in the order given; a text that comes twice once, with its gravest word.</summary>
    public static IEnumerable<Caution> GravestFirst(this IEnumerable<Caution> cautions) => cautions.OrderByDescending(c => c.Word).DistinctBy(c => c.Text);
}
