using System.Text.Json.Serialization;

namespace Sightglass.World;

/// <summary>Something done to a world from outside at a moment: what a record keeps and a replay repeats.</summary>
[JsonDerivedType(typeof(Operate), "operate")]
[JsonDerivedType(typeof(Walk), "walk")]
[JsonDerivedType(typeof(Ask), "ask")]
[JsonDerivedType(typeof(GiveBack), "give back")]
[JsonDerivedType(typeof(SetGuard), "set guard")]
[JsonDerivedType(typeof(TakeGuard), "take guard")]
[JsonDerivedType(typeof(Tell), "tell")]
[JsonDerivedType(typeof(Report), "report")]
[JsonDerivedType(typeof(Declare), "declare")]
[JsonDerivedType(typeof(TakeHint), "take hint")]
[JsonDerivedType(typeof(Stop), "stop")]
[JsonDerivedType(typeof(TakeOver), "take over")]
[JsonDerivedType(typeof(HandBack), "hand back")]
[JsonDerivedType(typeof(Speak), "speak")]
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

    /// <summary>Somebody asked by radio or in person for a protection, or for the permission to operate a control.</summary>
    /// <param name="Person">Who asks.</param>
    /// <param name="For">A protection that is asked for, or a control that needs permission.</param>
    public sealed record Ask(int Person, string For) : WorldAction;

    /// <summary>A protection given back by whoever holds it.</summary>
    public sealed record GiveBack(int Person, string Protection) : WorldAction;

    /// <summary>A lock, a chock or a signal set by a person where they stand.</summary>
    public sealed record SetGuard(int Person, string Protection, string Target) : WorldAction;

    /// <summary>A lock, a chock or a signal taken away.</summary>
    public sealed record TakeGuard(int Person, string Protection, string Target) : WorldAction;

    /// <summary>Something told to a role by radio or in person.</summary>
    public sealed record Tell(int Person, string Role, string Text) : WorldAction;

    /// <summary>What somebody reports that they found: one of the things that whoever follows the world offers.</summary>
    public sealed record Report(int Person, string Finding) : WorldAction;

    /// <summary>Somebody says that they are done.</summary>
    public sealed record Declare(int Person) : WorldAction;

    /// <summary>Somebody asks for a hint.</summary>
    public sealed record TakeHint(int Person) : WorldAction;

    /// <summary>Somebody calls that everything is to stop at once.</summary>
    public sealed record Stop(int Person) : WorldAction;

    /// <summary>The instructor acts in somebody's stead from now on.</summary>
    public sealed record TakeOver(int Person) : WorldAction;

    /// <summary>Whoever was relieved acts for themselves again.</summary>
    public sealed record HandBack(int Person) : WorldAction;

    /// <summary>Something said by radio to everybody by a role that nobody plays.</summary>
    public sealed record Speak(string Role, string Text) : WorldAction;

    /// <summary>A fault put in, with its values by name (SI).</summary>
    public sealed record PutIn(string Item, string Fault, System.Collections.Immutable.ImmutableSortedDictionary<string, double> Values) : WorldAction;

    /// <summary>A fault taken out.</summary>
    public sealed record TakeOut(string Item, string Fault) : WorldAction;

    /// <summary>A world input (grade, cant, …) set, SI.</summary>
    public sealed record SetInput(string Name, double Value) : WorldAction;
}
