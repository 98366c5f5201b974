namespace Sightglass.Web.Room.Trainee;

/// <summary>A piece of a trainee's page: what stands in the element of an id.</summary>
/// <param name="Id">Of the element.</param>
/// <param name="Html">Whole and well-formed.</param>
/// <param name="Within">Id of the piece that holds the element; empty for the page itself. When that is sent anew, so is this.</param>
public sealed record Fragment(string Id, string Html, string Within = "");
