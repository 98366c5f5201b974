using System.Globalization;
using System.Text;

namespace Sightglass.Tests.Support;

/// <summary>The text of a train's compressed air in an invented book: a locomotive that makes air and a brake handle, then cars that are all alike.</summary>
internal static class TrainText
{
    /// <summary>A book of nothing but a train.</summary>
    /// <param name="cars">0 and more.</param>
    public static string Book(int cars) => $$"""
        book: Air of a train
        length: 20 m
        roles: { hand: { walks: 1.3 m/s } }
        places: { cab: { x: 2 m, y: 2.4 m } }
        systems: { train air: { medium: brake, alive: yes } }
        {{Items(cars, "train air", "cab", "hand")}}
        situations:
          charged: { text: Everything charged and released. }
        """;

    /// <summary>The part <c>items:</c> of such a book.</summary>
    /// <param name="cars">0 and more.</param>
    /// <param name="system">All of it is in this one.</param>
    /// <param name="place">From where its controls are operated.</param>
    /// <param name="role">By whom.</param>
    public static string Items(int cars, string system, string place, string role)
    {
        StringBuilder text = new("items:\n");
        Add("governor of head", "governor, senses: main reservoir of head, cuts in: 130 psi, cuts out: 140 psi");
        Add("compressor of head", "compressor, to: main reservoir of head, displacement: 150 ft^3/min, loaded by: governor of head");
        Add("main reservoir of head", "reservoir, volume: 900 L, start pressure: 135 psi");
        Add("equalising reservoir of head", "reservoir, volume: 4 L, start pressure: 110 psi");
        Add("brake handle of head", $"handle, positions: [release, minimum, full service], who: [{role}], places: [\"{place}\"]");
        Add(
            "handle valve of head",
            "regulating valve, from: main reservoir of head, to: equalising reservoir of head, diameter: 2 mm, exhaust diameter: 1.6 mm, set by: brake handle of head, pressures: { release: 110 psi, minimum: 103 psi, full service: 84 psi }");
        Add("relay of head", "relay valve, from: main reservoir of head, to: brake pipe of head, follows: equalising reservoir of head, diameter: 8 mm, exhaust diameter: 10 mm");
        Add("brake pipe of head", "air line, length: 20 m, diameter: 32 mm, start pressure: 110 psi");
        Add("rear hose of head", "air line, length: 0.6 m, diameter: 28 mm, start pressure: 110 psi");
        Cock("rear angle cock of head", "brake pipe of head", "rear hose of head", open: cars > 0);
        for (int car = 1; car <= cars; car++)
        {
            Car(car);
        }

        return text.ToString();

        void Car(int car)
        {
            string of = $" of car {car.ToString(CultureInfo.InvariantCulture)}";
            string before = car == 1 ? "rear hose of head" : $"rear hose of car {(car - 1).ToString(CultureInfo.InvariantCulture)}";
            Add("front hose" + of, "air line, length: 0.6 m, diameter: 28 mm, start pressure: 110 psi");
            Add("coupling" + of, $"pipe, from: {before}, to: front hose{of}, length: 0.6 m, diameter: 28 mm");
            Add("brake pipe" + of, "air line, length: 26 m, diameter: 32 mm, start pressure: 110 psi");
            Cock("front angle cock" + of, "front hose" + of, "brake pipe" + of, open: true);
            Add("rear hose" + of, "air line, length: 0.6 m, diameter: 28 mm, start pressure: 110 psi");
            Cock("rear angle cock" + of, "brake pipe" + of, "rear hose" + of, open: car < cars);
            Add("auxiliary reservoir" + of, "reservoir, volume: 60 L, start pressure: 110 psi");
            Add("supply check" + of, $"check valve, from: brake pipe{of}, to: supply reservoir{of}, diameter: 3 mm");
            Add("supply reservoir" + of, "reservoir, volume: 90 L, start pressure: 110 psi");
            Add("control valve" + of, $"control valve, from: auxiliary reservoir{of}, to: cylinder{of}, senses: brake pipe{of}, diameter: 5 mm, exhaust diameter: 4 mm, release: direct");
            Add("cylinder" + of, "brake cylinder, diameter: 250 mm, travel: 150 mm");
            Add("leak" + of, $"orifice, from: brake pipe{of}, to: outside, diameter: 0.3 mm");
        }

        void Cock(string name, string from, string to, bool open) =>
            Add(name, $"hand valve, from: {from}, to: {to}, diameter: 25 mm, usual: {(open ? "open" : "closed")}, who: [{role}], places: [\"{place}\"]");

        void Add(string name, string kind) => text.Append(CultureInfo.InvariantCulture, $"  {name}: {{ kind: {kind}, system: {system} }}\n");
    }
}
