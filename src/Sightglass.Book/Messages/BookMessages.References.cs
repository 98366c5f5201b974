using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;

namespace Sightglass.Book.Messages;

/// <content>Names that must be declared.</content>
internal static partial class BookMessages
{
    /// <summary>B060…B064, B066, B075, B100, B101, B107, B108: a name that is not declared.</summary>
    public static Diagnostic NotDeclared(NameUse use, Span span, string name, IEnumerable<string> names)
    {
        (string code, string noun) = use switch
        {
            NameUse.Item => ("B060", "item"),
            NameUse.Place => ("B061", "place"),
            NameUse.Role => ("B062", "role"),
            NameUse.System => ("B063", "system"),
            NameUse.Protection => ("B064", "protection"),
            NameUse.Card => ("B075", "card"),
            NameUse.Car => ("B100", "car"),
            NameUse.Train => ("B101", "train"),
            NameUse.Situation => ("B107", "situation"),
            NameUse.Recording => ("B108", "recording"),
            NameUse.Assembly => ("B090", "assembly"),
            _ => ("B066", "road number"),
        };
        string[] all = [.. names];
        return Error(code, span, $"there is no {noun} {Quote(name)}", Suggest(name, all, noun == "assembly" ? "assemblies are" : $"{noun}s are") ?? $"declare it, or write a name that is declared");
    }

    public static Diagnostic NoPort(Span span, string port, string item, IReadOnlyCollection<string> ports) =>
        Error("B065", span, $"{Quote(item)} has no port {Quote(port)}", ports.Count == 0 ? "it has no ports; write its name alone" : Suggest(port, ports, "it has"));

    public static Diagnostic NoFault(Span span, string fault, string item, IReadOnlyCollection<string> faults) =>
        Error("B067", span, $"{Quote(item)} cannot have the fault {Quote(fault)}", faults.Count == 0 ? "its kind has no faults" : Suggest(fault, faults, "it can have"));

    public static Diagnostic NoQuantity(Span span, string quantity, string item, IReadOnlyCollection<string> quantities) =>
        Error("B068", span, $"{Quote(item)} has no quantity {Quote(quantity)}", quantities.Count == 0 ? "its kind has none" : Suggest(quantity, quantities, "it has"));

    public static Diagnostic NoStart(Span span, string name, IEnumerable<string> known) =>
        Error("B070", span, $"{Quote(name)} cannot be set at the start", Nearest.DidYouMean(name, known) ?? $"name a control, `QUANTITY of ITEM`, or one of {string.Join(", ", WorldInput.All.Select(w => w.Name))}");

    public static Diagnostic NotAStore(Span span, string item, string kind) =>
        Error("B071", span, $"a path cannot end at {Quote(item)}, which is a {kind}", "name an item that holds something, or `outside`");

    public static Diagnostic NotAWire(Span span, string item, string kind) =>
        Error("B071", span, $"current cannot go to {Quote(item)}, which is a {kind}", "name a wire, or `frame` for the metal of the machine");

    public static Diagnostic TwoMeanings(Span span, string name, string what, string other, Span first) =>
        Error("B072", span, $"{what} {Quote(name)} has the name of {other}{(first.Source is null ? "" : $" at {first}")}", "give one of them another name");

    public static Diagnostic NothingToChange(Span span, string item, IEnumerable<string> items) =>
        Error("B073", span, $"there is no item {Quote(item)} to change", Nearest.DidYouMean(item, items) ?? "a new item needs its `kind`");

    public static Diagnostic TornApart(Span span, string name, string whole) => Error("B069", span, $"{Quote(name)} is only a part of a name", $"write \"{whole}\" in quotes, because of its comma");

    public static Diagnostic PerhapsMeant(Span span, string declared, string used, Span where) =>
        new("B076", Severity.Note, span, $"nothing uses {Quote(declared)}", $"perhaps it should be {Quote(used)}, which is used at {where} and not declared");

    public static Diagnostic ToItself(Span span, string what, string name) => Error("B074", span, $"{what} leads from {Quote(name)} to itself", "name two different ends");
}
