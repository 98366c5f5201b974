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
            named.Add((new(named.Count, name), listed.IsMachine ? book : book.Cars[listed.Class], listed));
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
        foreach ((Vehicle vehicle, ClassBook type, TrainVehicle listed) in named)
        {
            bool turned = listed.IsTurned != againstTrain;
            Vehicle stood = vehicle with { Class = listed.Class, From = x, To = x + type.Length, IsTurned = turned };
            stands.Add(new(stood, type, listed, turned ? x + type.Length : x, turned));
            x += type.Length;
        }

        return stands.ToImmutable();
    }
}
