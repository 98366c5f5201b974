namespace Sightglass.Book.Model;

/// <summary>A vehicle of what is coupled: how that which is declared for its class is called there.</summary>
/// <param name="Index">Its place in the train, 0 at the head; 0 for a machine alone.</param>
/// <param name="Name"><c>car 3</c>, <c>unit 2</c>; empty for the machine itself, whose names stay as they are.</param>
public sealed record Vehicle(int Index, string Name)
{
    /// <summary>The words by which names of a car class speak of the car itself: <c>brakes of this car are applied</c>.</summary>
    public const string ThisCar = "this car";

    /// <summary>A machine that is coupled to nothing.</summary>
    public static Vehicle Alone { get; } = new(0, "");

    /// <summary>What it is: its class of cars, or the words by which a train lists machines; empty for a machine alone.</summary>
    public string Class { get; init; } = "";

    /// <summary>Where it begins, metres on the axis of the machine that the book is about.</summary>
    public double From { get; init; }

    /// <summary>Where it ends, metres; not known of a machine alone.</summary>
    public double To { get; init; }

    /// <summary>Whether its front faces the rear of the machine that the book is about.</summary>
    public bool IsTurned { get; init; }

    /// <summary>Whether it is the machine that the book is about.</summary>
    public bool IsTheMachine => Name.Length == 0;

    /// <summary>A declared name as it is called in the train: <c>brake pipe of car 3</c>, <c>brakes of car 3 are applied</c>.</summary>
    public string NameOf(string own)
    {
        ArgumentNullException.ThrowIfNull(own);
        return IsTheMachine ? own
            : own.Contains(ThisCar, StringComparison.Ordinal) ? own.Replace(ThisCar, Name, StringComparison.Ordinal)
            : $"{own} of {Name}";
    }
}
