using System.Globalization;
using Sightglass.Book.Model;
using Sightglass.Drawing.Walk;

namespace Sightglass.Cli.Output;

/// <summary>The walk as text, to read on a terminal or to print.</summary>
internal static class WalkText
{
    private const int Width = 100;

    public static void Print(TextWriter output, ClassBook book, IEnumerable<WalkStop> stops)
    {
        output.WriteLine(book.RoadNumberInUse is { } number ? $"{book.Title} {number}" : book.Title);
        Wrap(output, "", book.Notice);
        foreach (WalkStop stop in stops)
        {
            output.WriteLine();
            output.WriteLine($"{stop.Place.Name.ToUpperInvariant()}{Where(stop)}");
            Wrap(output, "  ", stop.Place.Text);
            foreach (string name in stop.Items)
            {
                PrintItem(output, book.Items[name]);
            }
        }
    }

    private static string Where(WalkStop stop)
    {
        string way = stop.Place.OnGround ? "" : stop.EnteredFrom is { } entry ? $", up from {entry}" : ", inside";
        string onward = stop.SecondsOnward is { } s ? string.Create(CultureInfo.InvariantCulture, $", {s:0} s to the next") : "";
        return $"  ({stop.Side.ToString().ToLowerInvariant()}{way}{onward})";
    }

    private static void PrintItem(TextWriter output, Item item)
    {
        output.WriteLine($"  • {item.Name}{(item.Positions.IsEmpty ? "" : $" [{string.Join(" | ", item.Positions)}]")}");
        Wrap(output, "      ", item.Purpose);
        Wrap(output, "      Normal: ", item.Normal);
        foreach (Caution caution in item.Cautions.GravestFirst())
        {
            Wrap(output, $"      {caution.Word.ToString().ToUpperInvariant()}: ", caution.Text);
        }
    }

    /// <summary>Prints a text in lines, the following ones indented like the first; nothing where the text is empty.</summary>
    public static void Wrap(TextWriter output, string first, string text)
    {
        if (text.Length == 0)
        {
            return;
        }

        string indent = new(' ', first.Length - first.TrimStart().Length);
        string line = first;
        foreach (string word in text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries))
        {
            if (line.Length + word.Length + 1 > Width && line.Trim().Length > 0)
            {
                output.WriteLine(line.TrimEnd());
                line = indent;
            }

            line += word + " ";
        }

        output.WriteLine(line.TrimEnd());
    }
}
