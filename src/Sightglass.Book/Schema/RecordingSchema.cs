using System.Text.Json.Nodes;
using Sightglass.Basics.Quantities;
using static Sightglass.Book.Schema.SchemaNodes;

namespace Sightglass.Book.Schema;

/// <summary>The schema of recordings and of what situations draw from them.</summary>
internal sealed class RecordingSchema(QuantityDefinitions quantities)
{
    public JsonObject Recording() => Map("A file of comma-separated values, and what its columns are of this book.",
    [
        Key("text", Text("What was recorded, for a person to read.")),
        Key("file", Pattern(@"^[^/\\:][^\\:]*\.[cC][sS][vV]$", "Below the book's folder, with forward slashes.")),
        Key("train", Text("The train in whose names the columns are called; the machine alone where absent.")),
        Key("time", Text("The head of the column with clock times (`14:02:30`, also after a date), or with a number that counts.")),
        Key("time unit", Choice(UnitTable.SymbolsOf(Dimension.Second), "In what that number counts.", "s")),
        Key("separator", Choice(["comma", "semicolon", "tab"], "What stands between fields; what the head line shows where absent.")),
        Key("decimal", Choice(["point", "comma"], "How decimals are written.", "point")),
        Key("heads in line", Line("The line of the heads; the first that is not blank where absent.")),
        Key("rows from line", Line("The first line that may be a row; the one after the heads where absent.")),
        Key("missing", Ref("names", "Texts that stand for no value, beside an empty field.")),
        Key("columns", List(Column(), "What the columns mean; all others are passed over.")),
    ], "file", "time", "columns");

    /// <summary>What stands under <c>states</c> of a situation.</summary>
    public JsonObject States() => Map("States to draw from: a case has one row of a recording, as a whole. What it does not tell is drawn from `start`.",
    [
        Key("recording", Text("A recording.")),
        Key("from", Text("The first moment, as the recording writes it; its beginning where absent.")),
        Key("to", Text("The last moment; its end where absent.")),
        Key("every", quantities.Value(Dimension.Second, "At least so long between two rows; every row where absent.")),
    ], "recording");

    private JsonObject Column()
    {
        JsonObject column = Map("It sets something at the start, is compared with something, or both.",
        [
            Key("column", Text("The head, as in the file.")),
            Key("sets", Ref("names", "A starting value as in `start` of a situation, or several that begin with the same.")),
            Key("compares", Text("An indication, or a formula of the book's names.")),
            Key("unit", Text("In what its numbers are; where absent, what the head says between brackets.")),
            Key("as", new JsonObject { ["type"] = new JsonArray("object", "null"), ["description"] = "What its texts mean: a position, or `yes` and `no`.", ["additionalProperties"] = new JsonObject { ["type"] = new JsonArray("string", "number", "boolean") } }),
            Key("within", Text("How far the machine may be from what was recorded.")),
        ], "column");
        column["anyOf"] = new JsonArray(new JsonObject { ["required"] = new JsonArray("sets") }, new JsonObject { ["required"] = new JsonArray("compares") });
        return column;
    }

    private static JsonObject Line(string says) => new() { ["type"] = "integer", ["minimum"] = 1, ["description"] = says };
}
