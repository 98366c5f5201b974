using System.Text.Json.Nodes;
using static Sightglass.Book.Schema.SchemaNodes;

namespace Sightglass.Book.Schema;

/// <summary>The schema of an assembly: its sections are those of a book, with holes.</summary>
internal sealed class AssemblySchema(SectionSchema sections)
{
    public JsonObject Assembly() => Map("Parts that each use has once; `{name}` and the parameters between braces are filled in.",
    [
        Key("text", Text("What it is.")),
        Key("parameters", Named(Map(null, [Key("text", Text("What it is for.")), Key("usual", new JsonObject { ["description"] = "What it is where a use says nothing; it must say something where this is absent." })]), "What a use says.")),
        Key("items", Parts(Ref("entry"), "Parts by name, `{name}` in each; positions from the place of the use.")),
        Key("facts", Parts(SectionSchema.Fact(), "Named truths, `{name}` in each.")),
        Key("signs", Parts(SectionSchema.Sign(), "What can be seen, heard, smelled or felt, `{name}` in each.")),
        Key("hazards", Parts(sections.Hazard(), "Dangers, `{name}` in each.")),
        Key("ports", Named(Text("A part, or `part, port`."), "Where paths from outside can end: `USE, PORT`.")),
    ]);

    private static JsonObject Parts(JsonObject part, string description)
    {
        JsonObject parts = Named(part, description);
        parts["propertyNames"] = Ref("name with holes");
        return parts;
    }
}
