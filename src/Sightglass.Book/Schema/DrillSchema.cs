using System.Text.Json.Nodes;
using Sightglass.Basics.Quantities;
using static Sightglass.Book.Schema.SchemaNodes;

namespace Sightglass.Book.Schema;

/// <summary>The schema of drills.</summary>
internal sealed class DrillSchema(QuantityDefinitions quantities)
{
    public JsonObject Drill() => Map("What is judged is what came of it, never which card was followed.",
    [
        Key("aim", Text("What is to be learned or shown, in one sentence.")),
        Key("level", Choice(["first day", "working", "qualifying"], "For whom it is.", "working")),
        Key("use", Choice(["practice", "qualifying"], "A qualifying drill is not passed with a hint.", "practice")),
        Key("situation", Text("Where it starts; its ranges are the drill's variants.")),
        Key("role", Text("Whom the trainee plays: one of those who are there in the situation.")),
        Key("time limit", quantities.Value(Dimension.Second, "From the start.", "1 h")),
        Key("stop word", Text("What anybody says who wants everything to stop at once.")),
        Key("not real", Ref("names", "What differs from a real machine, told before it begins.")),
        Key("tools", Ref("names", "What the trainee has in hand.")),
        Key("with cards", Ref("yes or no", "Whether the trainee may have cards in hand; yes where absent.")),
        Key("cue", Map("What has happened when the trainee has something to do; the start where absent.",
        [
            Key("is", Text("A condition of true quantities and facts.")),
            Key("known from", Ref("names", "Signs and instruments that tell it to whoever is where they can be seen, heard, smelled or read; known at once where absent. Time limits count from there.")),
        ], "is")),
        Key("events", List(Event(), "What happens on the way, each once.")),
        Key("objectives", Named(Objective(), "What is to be so at the end.")),
        Key("reports", Named(Report(), "What may be reported; where there is something, the right one is to be.")),
        Key("must never", Named(Never(), "What must not come about at any moment.")),
        Key("order", Named(Order(), "What must have been so before something else comes about: those orders alone that safety needs.")),
        Key("passes from", quantities.Value(Dimension.One, "Share of the points, beside every critical line.", "80 %")),
        Key("hints", List(Map(null, [Key("says", Text()), Key("costs", quantities.Value(Dimension.One, "Points.", "1"))], "says"), "From the faintest to the plainest.")),
        Key("observe", Ref("names", "What an assessor watches beside what the machine tells, a sentence each: go, no go or not seen.")),
        Key("asks", List(Map(null, [Key("question", Text()), Key("answer", Text())], "question", "answer"), "Questions for afterwards.")),
        Key("solved by", Ref("names", "Cards that pass it, by the names of their files without the ending.")),
    ], "aim", "situation", "role", "objectives");

    private JsonObject Objective() => Map(null,
    [
        Key("is", Text("A condition of true quantities and facts.")),
        Key("within", quantities.Value(Dimension.Second, "From the moment at which the trainee could know; before the end where absent.")),
        Key("stays", quantities.Value(Dimension.Second, "How long it must stay so after the trainee has said that they are done.", "0 s")),
        Key("worth", quantities.Value(Dimension.One, "Points.", "1")),
        Key("critical", Ref("yes or no", "Without it the drill is not passed; yes where absent.")),
        Key("once", Ref("yes or no", "It need only have been so at some moment, not at the end; no where absent.")),
        Key("or reported", Ref("names", "Reports that do instead, where they are right.")),
        Key("because", Text("Why it matters, for the debrief.")),
    ], "is");

    private static JsonObject Report() => Map(null,
    [
        Key("is", Text("A condition of true quantities, facts and faults (`fault leak of forward compartment`): when it is right.")),
        Key("told as", Ref("names", "The sentences by which the cards that solve the drill tell it, as they stand there.")),
        Key("because", Text("How one could know, for the debrief.")),
    ], "is");

    private static JsonObject Never() => new()
    {
        ["anyOf"] = new JsonArray(
            Text("A condition of true quantities and facts."),
            Map(null, [Key("is", Text("A condition of true quantities and facts.")), Key("because", Text("Why, for the debrief."))], "is")),
    };

    private static JsonObject Order() => Map(null,
    [
        Key("first", Text("A condition that must have been so, if only for a moment.")),
        Key("then", Text("Before this one comes about.")),
        Key("because", Text("Why, for the debrief.")),
    ], "first", "then");

    private JsonObject Event() => Map("Its moment is when all that is said of it has come about; it does one thing.",
    [
        Key("after", quantities.Value(Dimension.Second, "From the start, or from the moment that is said otherwise.", "0 s")),
        Key("when", Text("A condition of true quantities and facts.")),
        Key("at", Text("A place to which the trainee has come.")),
        Key("operated", Text("A control to which the trainee has put a hand.")),
        Key("set", Text("A control, or a quantity of the surroundings.")),
        Key("to", new JsonObject { ["type"] = new JsonArray("string", "number", "boolean"), ["description"] = "The position, or the value." }),
        Key("fault", Text("A fault that is put in.")),
        Key("without", Text("A fault that is taken out.")),
        Key("on", Text("The item of the fault.")),
        Key("values", Named(new JsonObject { ["type"] = new JsonArray("string", "number"), ["description"] = "With its unit." }, "Of the fault; those that are not named are as usual.")),
        Key("says", Text("What is said to the trainee.")),
        Key("by", Text("The role that says it.")),
    ]);
}
