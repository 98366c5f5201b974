using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Messages;

/// <content>Warnings: the book can be used, but something is missing.</content>
internal static partial class BookMessages
{
    public static Diagnostic NotReached(Span span, string place, string from) =>
        Warning("B080", span, $"nobody can walk from {Quote(from)} to {Quote(place)}", "add a leg, or give it z 0 if it is on the ground");

    public static Diagnostic NoPlace(Span span, string item) => Warning("B081", span, $"{Quote(item)} has no place from which it can be seen or reached", "add `places: [ … ]`");

    public static Diagnostic TextsMissing(Span span, string item, IEnumerable<string> keys) =>
        Warning("B082", span, $"{Quote(item)} lacks {string.Join(", ", keys.Select(k => $"`{k}`"))}", "a person who stands before it wants to know");

    public static Diagnostic AnyoneOperates(Span span, string item) => Warning("B083", span, $"nothing says who may operate {Quote(item)}", "add `who: [ … ]`");

    public static Diagnostic OutsideMachine(Span span, string item) => Warning("B084", span, $"{Quote(item)} lies outside of the machine", "x runs from 0 to `length`, y from −width/2 (left) to +width/2 (right), z is above rail");

    public static Diagnostic NoPhoto(Span span, string photo) => Warning("B085", span, $"there is no picture {Quote(photo)} in the book's folder");
}
