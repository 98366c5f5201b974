using System.Text.Json.Serialization;

namespace Sightglass.World;

/// <summary>Something done to a world from outside at a moment: what a record keeps and a replay repeats.</summary>
[JsonDerivedType(typeof(Operate), "operate")]
[JsonDerivedType(typeof(Walk), "walk")]
[JsonDerivedType(typeof(PutIn), "put in")]
[JsonDerivedType(typeof(TakeOut), "take out")]
[JsonDerivedType(typeof(SetInput), "set input")]
public abstract record WorldAction
{
    private WorldAction()
    {
    }

    /// <summary>A control put in a position by a person (or by the instructor's hand, person −1, who reaches everything).</summary>
    public sealed record Operate(int Person, string Item, string Position) : WorldAction;

    /// <summary>A person sent to a place.</summary>
    public sealed record Walk(int Person, string Place) : WorldAction;

    /// <summary>A fault put in, with its values by name (SI).</summary>
    public sealed record PutIn(string Item, string Fault, System.Collections.Immutable.ImmutableSortedDictionary<string, double> Values) : WorldAction;

    /// <summary>A fault taken out.</summary>
    public sealed record TakeOut(string Item, string Fault) : WorldAction;

    /// <summary>A world input (grade, cant, …) set, SI.</summary>
    public sealed record SetInput(string Name, double Value) : WorldAction;
}
