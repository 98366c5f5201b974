using Json.Schema;
using Sightglass.Book.Kinds;
using Sightglass.Book.Schema;

namespace Sightglass.Book.Tests.Schema;

/// <summary>Schemas ready to evaluate, each in a registry of its own because they share their identifier.</summary>
internal static class Schemas
{
    public static JsonSchema Of(KindCatalog kinds) => JsonSchema.FromText(BookSchema.Write(kinds), new BuildOptions { SchemaRegistry = new SchemaRegistry() });
}
