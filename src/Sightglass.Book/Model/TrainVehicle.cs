using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Model;

/// <summary>One vehicle as a train lists it.</summary>
/// <param name="Class">A class of cars, or one of the two words for machines.</param>
/// <param name="IsTurned">Whether its front faces the rear of the train.</param>
/// <param name="Span">Where it is listed.</param>
public sealed record TrainVehicle(string Class, bool IsTurned, Span Span)
{
    /// <summary>The machine that the book is about.</summary>
    public const string ThisMachine = "this machine";

    /// <summary>Another machine of the class.</summary>
    public const string AnotherMachine = "another machine";

    /// <summary>Of another machine: the road number whose modifications it has; null where it is as this one.</summary>
    public string? RoadNumber { get; init; }

    public bool IsThisMachine => Class == ThisMachine;

    public bool IsMachine => IsMachineClass(Class);

    /// <summary>Whether a class that a train lists is the machine's own.</summary>
    public static bool IsMachineClass(string listed) => listed is ThisMachine or AnotherMachine;
}
