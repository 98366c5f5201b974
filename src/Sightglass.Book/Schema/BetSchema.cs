using System.Text.Json.Nodes;
using Sightglass.Basics.Quantities;
using static Sightglass.Book.Schema.SchemaNodes;

namespace Sightglass.Book.Schema;

/// <summary>The schema of bets.</summary>
internal sealed class BetSchema(QuantityDefinitions quantities)
{
    public JsonObject Bet() => Map("Which answer comes true is worked out by running it.",
    [
        Key("asks", Text("The question.")),
        Key("situation", Text("Where it starts; each of its values fixed.")),
        Key("system", Text("The system that is drawn; that which the situation is about where absent.")),
        Key("acts", List(Act(), "What is done while it runs, by the instructor's hand.")),
        Key("runs for", quantities.Value(Dimension.Second, "How long it runs.")),
        Key("shows", List(Show(), "True quantities that the wall shows, four at most.")),
        Key("answers", List(Answer(), "Two to six. The first whose condition holds at the end has come true.")),
        Key("because", Text("Why it is so.")),
        Key("lesson", Text("What is to be taken home, in one sentence.")),
    ], "asks", "situation", "runs for", "answers");

    private JsonObject Act() => Map(null,
    [
        Key("after", quantities.Value(Dimension.Second, "From the start.", "0 s")),
        Key("set", Text("A control, or a quantity of the surroundings.")),
        Key("to", new JsonObject { ["type"] = new JsonArray("string", "number", "boolean"), ["description"] = "The position, or the value." }),
    ], "set", "to");

    private static JsonObject Show() => new()
    {
        ["anyOf"] = new JsonArray(
            Text("A formula of true quantities."),
            Map(null, [Key("is", Text("A formula of true quantities.")), Key("as", Text("What it is called."))], "is")),
    };

    private static JsonObject Answer() => Map(null, [Key("says", Text("For people to read.")), Key("when", Text("The condition under which it has come true; that nothing else has, where absent."))], "says");
}
