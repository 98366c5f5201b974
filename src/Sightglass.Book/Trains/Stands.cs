using System.Collections.Immutable;
using System.Globalization;
using Sightglass.Book.Model;

namespace Sightglass.Book.Trains;

/// <summary>Names the vehicles of a train and sets them one behind the other.</summary>
internal static class Stands
{
    /// <summary>In the order of the machine's axes: from its front to its rear.</summary>
    public static ImmutableArray<Stand> Of(ClassBook book, Train train)
    {
        List<(Vehicle Vehicle, ClassBook Class, TrainVehicle Listed)> named = [];
        int cars = 0, units = 1;
        foreach (TrainVehicle listed in train.Vehicles)
        {
            string name = listed.IsThisMachine ? ""
                : listed.IsMachine ? string.Create(CultureInfo.InvariantCulture, $"unit {++units}")
                : string.Create(CultureInfo.InvariantCulture, $"car {++cars}");
            ClassBook type = !listed.IsMachine ? book.Cars[listed.Class] : listed.RoadNumber is { } number ? book.For(number) : book;
            named.Add((new(named.Count, name), type, listed));
        }

        int own = named.FindIndex(v => v.Vehicle.IsTheMachine);
        bool againstTrain = named[own].Listed.IsTurned;
        if (againstTrain)
        {
            named.Reverse();
            own = named.Count - 1 - own;
        }

        double x = -named.Take(own).Sum(v => v.Class.Length);
        ImmutableArray<Stand>.Builder stands = ImmutableArray.CreateBuilder<Stand>();
        foreach ((Vehicle vehicle, ClassBook of, TrainVehicle listed) in named)
        {
            bool turned = listed.IsTurned != againstTrain;
            Vehicle stood = vehicle with { Class = listed.Class, From = x, To = x + of.Length, IsTurned = turned };
            stands.Add(new(stood, of, listed, turned ? x + of.Length : x, turned));
            x += of.Length;
        }

        return stands.ToImmutable();
    }
}
