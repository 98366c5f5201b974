using System.Collections.Immutable;
using Sightglass.Book.Model;

namespace Sightglass.Book.Trains;

/// <summary>What is true of a train because it is true of its cars: <c>brakes of every car are released</c>, <c>brakes of a car are applied</c>.</summary>
internal static class TrainFacts
{
    private const string EveryCar = "every car";
    private const string SomeCar = "a car";

    /// <summary>For every fact of a car that names itself by <see cref="Vehicle.ThisCar"/> one of all cars that have it and one of any.</summary>
    public static IEnumerable<KeyValuePair<string, Fact>> Of(ImmutableArray<Stand> stands)
    {
        IEnumerable<IGrouping<string, (Fact Fact, Vehicle Vehicle)>> byName = stands.Where(s => !s.Listed.IsMachine)
            .SelectMany(s => s.Class.Facts.Values.Where(f => f.Name.Contains(Vehicle.ThisCar, StringComparison.Ordinal)).Select(f => (Fact: f, s.Vehicle)))
            .GroupBy(f => f.Fact.Name, StringComparer.Ordinal);
        foreach (IGrouping<string, (Fact Fact, Vehicle Vehicle)> one in byName)
        {
            yield return Joined(one, EveryCar, " and ");
            yield return Joined(one, SomeCar, " or ");
        }
    }

    private static KeyValuePair<string, Fact> Joined(IGrouping<string, (Fact Fact, Vehicle Vehicle)> facts, string whose, string between)
    {
        Fact first = facts.First().Fact;
        string name = first.Name.Replace(Vehicle.ThisCar, whose, StringComparison.Ordinal);
        string formula = string.Join(between, facts.OrderBy(f => f.Vehicle.Index).Select(f => f.Vehicle.NameOf(f.Fact.Name)));
        return new(name, new(name, first.Span, formula, first.FormulaSpan, first.Text));
    }
}
