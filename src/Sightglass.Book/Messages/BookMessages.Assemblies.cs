using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Messages;

/// <content>Assemblies and their uses.</content>
internal static partial class BookMessages
{
    public static Diagnostic NoParameter(Span span, string hole, IEnumerable<string> parameters) =>
        Error("B091", span, $"there is no parameter {Quote(hole)} to fill {Quote($"{{{hole}}}")}", Suggest(hole, parameters, "there are") ?? "declare it under `parameters`");

    public static Diagnostic NoText(Span span, string hole, string described) =>
        Error("B092", span, $"{Quote(hole)} is {described} and cannot stand within a text", $"give a single value, or let {Quote($"{{{hole}}}")} be all that is written here");

    public static Diagnostic WithinItself(Span span, string assembly, bool isCycle, int deepest) => isCycle
        ? Error("B093", span, $"the assembly {Quote(assembly)} is used within itself", "use another one here")
        : Error("B093", span, $"assemblies are nested deeper than {deepest}", "write the inner ones out");

    public static Diagnostic NameWithoutUse(Span span, string part) =>
        Error("B094", span, $"{Quote(part)} is the same for every use of the assembly", "put `{name}` into it, in quotes: `\"{name} valve\"`");

    public static Diagnostic UnusedAssembly(Span span, string assembly) =>
        Warning("B095", span, $"nothing uses the assembly {Quote(assembly)}, so that its parts were not checked", "write an item with `assembly: NAME`, or delete it");

    public static Diagnostic UnusedParameter(Span span, string parameter, string assembly) =>
        Warning("B095", span, $"nothing in the assembly {Quote(assembly)} uses the parameter {Quote(parameter)}", $"write {Quote($"{{{parameter}}}")} where its value goes, or delete it");

    public static Diagnostic NotOfUse(Span span, string use, string? port, IReadOnlyCollection<string> ports) => port is null
        ? Error("B065", span, $"{Quote(use)} is an assembly; a path ends at one of its ports", Suggest("", ports, "it shows") ?? "give it `ports`")
        : Error("B065", span, $"{Quote(use)} shows no port {Quote(port)}", ports.Count == 0 ? "give its assembly `ports`" : Suggest(port, ports, "it shows"));
}
