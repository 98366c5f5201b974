using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Messages;

/// <content>Trains and what couples them.</content>
internal static partial class BookMessages
{
    public static Diagnostic MachineNotOnce(Span span, string train, int times) =>
        Error("B102", span, $"the train {Quote(train)} has `this machine` {(times == 0 ? "nowhere" : $"{times} times")}", "name it once among the `vehicles`; others of the class are `another machine`");

    public static Diagnostic TrainTooLong(Span span, string train, int vehicles, int most) =>
        Error("B103", span, $"the train {Quote(train)} has {vehicles} vehicles; at most {most} can be coupled", "make it shorter");

    public static Diagnostic TooManyVehicles(Span span, int most) => Error("B103", span, $"with this the train has more than {most} vehicles", "make it shorter");

    public static Diagnostic NoMachine(Span span) => Error("B102", span, "the train has no machine", "name one among its `vehicles`: `machine`");

    public static Diagnostic MachineTwice(Span span) => Error("B102", span, "`this machine` stands here a second time", "write `machine` for another of the class");

    public static Diagnostic CannotCouple(Span span, string line, string one, string kind, string other, string otherKind) =>
        Error("B104", span, $"{Quote(line)} cannot be coupled: {Quote(one)} is a {kind}, {Quote(other)} is a {otherKind}", "name items of one kind that can be coupled under `joins` of both ends");

    public static Diagnostic NoEachCar(Span span, string name) =>
        Error("B105", span, $"no car has what {Quote(name)} names", "`of each car` stands for the cars of the situation's `train`, one by one");
}
