using System.Net;
using System.Text;
using Sightglass.Basics.Language;
using Sightglass.Book.Model;
using Sightglass.Drawing.Strip;
using Sightglass.Drawing.Svg;
using Sightglass.Web.Live;
using Sightglass.Web.Machine;

namespace Sightglass.Web.Walk;

/// <summary>
/// The walk for a printed sheet, a side a row, nobody on it. A whole train would be as thin as a thread, and its coaches say the same: it stands once as an outline, and
/// below it each sort of vehicle once, with every name.
/// </summary>
internal static class WalkRows
{
    private static readonly Side[][] s_rows = [[Side.Right], [Side.Left], [Side.Rear, Side.Front]];
    private static readonly StripOptions s_names = new() { Scale = 38, MostTiers = 8, Interactive = false };
    private static readonly StripOptions s_outline = new() { Scale = 9, Interactive = false };

    /// <summary>The rows as elements of a page.</summary>
    /// <param name="book">What is walked round: a machine, or a train.</param>
    /// <param name="machine">The machine of the book, coupled to nothing.</param>
    public static string Of(ClassBook book, ClassBook machine)
    {
        StringBuilder page = new();
        if (book.Vehicles.Length == 1)
        {
            return Rows(page, book, s_names, s_rows, "row").ToString();
        }

        page.Append("<section>");
        Heading(page, Say.Book(book.TrainInUse) ?? "");
        Rows(page, book, s_outline, s_rows[..2], "row");
        page.Append("<ol class=\"vehicles\">");
        foreach (Vehicle vehicle in MachineChoice.Vehicles(book))
        {
            page.Append("<li>").Append(WebUtility.HtmlEncode(Told(vehicle))).Append("</li>");
        }

        page.Append("</ol></section>");
        int sort = 0;
        foreach (IGrouping<string, Vehicle> same in MachineChoice.Vehicles(book).GroupBy(v => book.Cars.ContainsKey(v.Class) ? v.Class : ""))
        {
            page.Append("<section>");
            Heading(page, string.Join(", ", same.Select(MachineChoice.WordsOf)));
            Rows(page, book.Cars.GetValueOrDefault(same.Key, machine), s_names, s_rows, $"sort{++sort}-").Append("</section>");
        }

        return page.ToString();
    }

    private static string Told(Vehicle vehicle)
    {
        string name = Words.Capital(MachineChoice.WordsOf(vehicle));
        string said = vehicle.IsTheMachine ? name : $"{name}, {Say.Book(vehicle.Class)}";
        return vehicle.IsTurned ? Say.With($"{said}, turned") : said;
    }

    private static StringBuilder Rows(StringBuilder page, ClassBook book, StripOptions options, Side[][] rows, string prefix)
    {
        for (int i = 0; i < rows.Length; i++)
        {
            page.Append(StripDrawing.Render(book, options with { Sides = [.. rows[i]] }, SvgOptions.Inline with { IdPrefix = $"{prefix}{i + 1}-" }));
        }

        return page;
    }

    private static void Heading(StringBuilder page, string words) => page.Append("<h2>").Append(WebUtility.HtmlEncode(Words.Capital(words))).Append("</h2>");
}
