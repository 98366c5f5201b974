using System.Collections.Immutable;
using Sightglass.Book.Model;

namespace Sightglass.Trials.Consists;

/// <summary>Which units answer a command of the leading cab.</summary>
/// <param name="Command">It.</param>
/// <param name="Units">Each machine of the train by its place in it, and whether it answers.</param>
public sealed record CommandAnswers(TrainCommand Command, ImmutableArray<(int Vehicle, bool Answers)> Units)
{
    public bool AnsweredBy(int vehicle) => Units.Any(u => u.Vehicle == vehicle && u.Answers);
}
