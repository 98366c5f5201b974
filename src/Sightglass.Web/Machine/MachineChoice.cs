using System.Collections.Immutable;
using Sightglass.Basics.Language;
using Sightglass.Book.Model;
using Sightglass.Web.Live;

namespace Sightglass.Web.Machine;

/// <summary>What of a running machine is shown.</summary>
/// <param name="System">A living system; null for a book without.</param>
/// <param name="Vehicle">Index of a vehicle; null for the whole train.</param>
internal sealed record MachineChoice(string? System, int? Vehicle)
{
    /// <summary>Says in an address that all vehicles are shown.</summary>
    public const string WholeTrain = "the whole train";

    /// <summary>What the machine that the book is about is called among the vehicles.</summary>
    public const string TheMachine = "this machine";

    public static string[] Systems(ClassBook book) => [.. LivingSystems.Of(book)];

    /// <summary>From the head.</summary>
    public static ImmutableArray<Vehicle> Vehicles(ClassBook book) => [.. book.Vehicles.OrderBy(v => v.From)];

    public static string NameOf(Vehicle vehicle) => vehicle.IsTheMachine ? TheMachine : vehicle.Name;

    /// <summary>As a person reads it.</summary>
    public static string WordsOf(Vehicle vehicle) => vehicle.IsTheMachine ? Say.It("this machine") : Say.Book(vehicle.Name);

    public static string? Next(string[] all, string? now) => all.Length == 0 ? null : all[(Array.IndexOf(all, now) + 1) % all.Length];

    /// <summary>What an address asks for, where there is such a thing; else what the situation is about, on the machine itself.</summary>
    public static MachineChoice Of(ClassBook book, string? situation, string? askedSystem, string? askedVehicle)
    {
        string? system = Array.Find(Systems(book), s => s == askedSystem) ?? LivingSystems.About(book, situation is null ? null : book.Situations.GetValueOrDefault(situation));
        ImmutableArray<Vehicle> vehicles = Vehicles(book);
        Vehicle vehicle = vehicles.FirstOrDefault(v => NameOf(v) == askedVehicle) ?? vehicles.First(v => v.IsTheMachine);
        return new(system, askedVehicle == WholeTrain && vehicles.Length > 1 ? null : vehicle.Index);
    }

    public string VehicleWords(ClassBook book) => Vehicle is { } index ? WordsOf(book.Vehicles.First(v => v.Index == index)) : Say.It("the whole train");

    public string VehicleName(ClassBook book) => Vehicle is { } index ? NameOf(book.Vehicles.First(v => v.Index == index)) : WholeTrain;
}
