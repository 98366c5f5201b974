using System.Globalization;
using System.Text;
using Sightglass.Book.Model;

namespace Sightglass.Book.Consists;

/// <summary>Writes a train as a file that <see cref="ConsistReader"/> reads: to begin one's own with.</summary>
public static class ConsistText
{
    /// <param name="consist">Vehicles, numbers, masses and the way; controls and what is not coupled as well.</param>
    public static string Of(Consist consist)
    {
        ArgumentNullException.ThrowIfNull(consist);
        StringBuilder text = new();
        text.Append(CultureInfo.InvariantCulture, $"consist: {Quoted(consist.Title)}\ngrade: {consist.Grade * 100:0.###} %\ncurve: {consist.Curve:0.###}\nadhesion: {consist.Adhesion * 100:0.###} %\nvehicles:\n");
        for (int i = 0, next; i < consist.Vehicles.Length; i = next)
        {
            string one = Keys(consist.Vehicles[i]);
            next = i + 1;
            while (next < consist.Vehicles.Length && consist.Vehicles[i].Number.Length == 0 && Keys(consist.Vehicles[next]) == one)
            {
                next++;
            }

            text.Append("  - { ").Append(one).Append(next - i > 1 ? string.Create(CultureInfo.InvariantCulture, $", count: {next - i}") : "").Append(" }\n");
        }

        return text.ToString();
    }

    private static string Keys(ConsistVehicle vehicle)
    {
        string of = vehicle.Listed.Class == TrainVehicle.AnotherMachine ? ConsistReader.Machine : vehicle.Listed.Class;
        List<string> keys = [$"vehicle: {Quoted(of)}"];
        Add(vehicle.Number.Length > 0, $"number: {Quoted(vehicle.Number)}");
        Add(vehicle.Listed.IsTurned, "turned: yes");
        Add(vehicle.IsDead, "dead: yes");
        Add(vehicle.Mass is not null, string.Create(CultureInfo.InvariantCulture, $"mass: {vehicle.Mass:0.###} kg"));
        Add(!vehicle.NotCoupled.IsEmpty, $"not coupled behind: [{string.Join(", ", vehicle.NotCoupled.Select(n => Quoted(n.Line)))}]");
        Add(!vehicle.Stands.IsEmpty, $"stands: {{ {string.Join(", ", vehicle.Stands.Select(s => $"{Quoted(s.Item)}: {Quoted(s.Position)}"))} }}");
        return string.Join(", ", keys);

        void Add(bool says, string key)
        {
            if (says)
            {
                keys.Add(key);
            }
        }
    }

    /// <summary>A text as YAML reads it back: plain where it is made of words alone.</summary>
    private static string Quoted(string text) =>
        text.Length > 0 && char.IsAsciiLetter(text[0]) && text.All(c => char.IsLetter(c) || c is ' ' or '-') && text is not ("on" or "off" or "yes" or "no" or "true" or "false" or "null")
            ? text
            : $"\"{text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal)}\"";
}
