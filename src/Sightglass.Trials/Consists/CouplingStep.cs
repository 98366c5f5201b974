using System.Collections.Immutable;
using Sightglass.Book.Model;

namespace Sightglass.Trials.Consists;

/// <summary>A line as it is coupled along the train: by whom, under which protection, and what is dangerous.</summary>
/// <param name="Line">As ends name it.</param>
/// <param name="Joints">Places in the train of the vehicles behind which it is coupled.</param>
/// <param name="Coupling">What joins it, at the first of them.</param>
/// <param name="Protections">That are needed, in the order of the book.</param>
/// <param name="Gravest">What is gravest of what is dangerous there; null for nothing.</param>
public sealed record CouplingStep(string Line, ImmutableArray<int> Joints, Item Coupling, ImmutableArray<Protection> Protections, Hazard? Gravest);
