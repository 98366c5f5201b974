using Sightglass.Basics.Time;
using Sightglass.World;

namespace Sightglass.Web.Room;

/// <summary>Somebody in a drill as the instructor sees them: where they are, what they are at and for how long.</summary>
/// <param name="Role">In the book.</param>
/// <param name="Place">Where they stand; null on the way.</param>
/// <param name="From">The place that they left last; that of the start where they never walked.</param>
/// <param name="Towards">Where their walk ends; null while standing.</param>
/// <param name="Deed">What they are at; null: nothing, or walking.</param>
/// <param name="Until">When that, or the walk, is done; null: nothing of either.</param>
/// <param name="Since">Since when they stand there, or are on the way.</param>
public sealed record PersonLook(string Role, string? Place, string From, string? Towards, WorldAction? Deed, SimTime? Until, SimTime Since);
