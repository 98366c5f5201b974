using System.Globalization;
using System.Text.RegularExpressions;
using Sightglass.Book.Model;
using Sightglass.Drawing.Overview;

namespace Sightglass.Web.Room.Instructor;

/// <summary>Small strips with a person at a place, each drawn once for a page.</summary>
internal sealed partial class StripShelf
{
    /// <summary>Pixels, of which the page makes what fits.</summary>
    private const double Width = 430;

    private readonly Dictionary<(ClassBook Book, string Place), string> _drawn = [];
    private readonly Dictionary<ClassBook, double> _scales = [];

    /// <summary>The strip of a machine or a train with somebody where they stand.</summary>
    public string Of(ClassBook book, string? place)
    {
        (ClassBook, string) key = (book, place ?? "");
        if (!_drawn.TryGetValue(key, out string? drawn))
        {
            drawn = _drawn[key] = OverviewDrawing.Render(book, new OverviewOptions { CurrentPlace = place, Scale = ScaleOf(book), Person = true });
        }

        return drawn;
    }

    private double ScaleOf(ClassBook book)
    {
        if (!_scales.TryGetValue(book, out double scale))
        {
            const double one = 4;
            Match size = ViewBox().Match(OverviewDrawing.Render(book, new OverviewOptions { Scale = one, Stops = false }));
            scale = _scales[book] = one * Width / double.Parse(size.Groups["width"].Value, CultureInfo.InvariantCulture);
        }

        return scale;
    }

    [GeneratedRegex("""viewBox="[^ ]+ [^ ]+ (?<width>[^ ]+) """)]
    private static partial Regex ViewBox();
}
