using System.Collections.Immutable;
using System.Globalization;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Language;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Model;

namespace Sightglass.World.Hauls;

/// <summary>Reads what somebody typed of a run; a command and a page say the same of what is wrong.</summary>
/// <param name="typed">Texts by input; one that is absent or empty takes what is usual.</param>
/// <param name="refused">Takes what cannot be read.</param>
public sealed class HaulReader(IReadOnlyDictionary<HaulInput, string> typed, ICollection<HaulRefusal> refused)
{
    /// <summary>No load, no machine: how people write that there is none.</summary>
    private const string Off = "off";

    /// <summary>Places at which one run may be stopped.</summary>
    private const int MostStops = 8;

    /// <summary>The request; what cannot be read of it is left as usual and told.</summary>
    /// <param name="route">The route that is run.</param>
    /// <param name="sands">Whether it sands.</param>
    public HaulRequest Read(Route route, bool sands)
    {
        ArgumentNullException.ThrowIfNull(route);
        return new(route, Text(HaulInput.Train))
        {
            RoadNumber = Text(HaulInput.RoadNumber),
            Rail = Text(HaulInput.Rail),
            Sands = sands,
            Dead = [.. Parts(HaulInput.Dead).Select(Machine).OfType<int>()],
            HeadEnd = HeadEnd(),
            Fill = Share(HaulInput.Fill, 0, 1),
            Sets = [.. Parts(HaulInput.Sets).Select(Set).OfType<(string, string)>()],
            Margin = Share(HaulInput.Margin, 0, 0.95) ?? HaulRequest.UsualMargin,
            StopsAt = Stops(route),
        };
    }

    private string? Text(HaulInput input) => typed.GetValueOrDefault(input)?.Trim() is { Length: > 0 } text ? text : null;

    /// <summary>What stands between semicolons and line breaks.</summary>
    private IEnumerable<string> Parts(HaulInput input) => (Text(input) ?? "").Split([';', '\n', '\r'], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);

    private int? Machine(string text)
    {
        if (text == Off || !int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int machine))
        {
            refused.Add(new(HaulInput.Dead, Say.With($"`{text}` is no machine: count them from the head, such as `2`.")));
            return null;
        }

        return machine;
    }

    private double? HeadEnd() => Text(HaulInput.HeadEnd) is not { } text ? null
        : text == Off ? 0
        : Quantity(text, Dimension.Power) is { Si: >= 0 } power ? power.Si
        : No(HaulInput.HeadEnd, Say.With($"`{text}` is no load: write `off`, or a power such as `240 kW`."));

    private double? Share(HaulInput input, double least, double most) => Text(input) is not { } text ? null
        : Quantity(text, Dimension.One) is { } share && share.Si >= least && share.Si <= most ? share.Si
        : No(input, Say.With($"`{text}` is no share from {least * 100:0} % to {most * 100:0} %: write it such as `70 %`."));

    private (string Name, string Value)? Set(string text)
    {
        string[] sides = text.Split('=', 2, StringSplitOptions.TrimEntries);
        if (sides is [{ Length: > 0 }, { Length: > 0 }])
        {
            return (sides[0], sides[1]);
        }

        refused.Add(new(HaulInput.Sets, Say.With($"`{text}` says nothing of the start: write `NAME = VALUE`, such as `aft supply valve = closed`.")));
        return null;
    }

    private ImmutableArray<double> Stops(Route route)
    {
        string[] parts = [.. Parts(HaulInput.StopsAt)];
        if (parts.Length > MostStops)
        {
            refused.Add(new(HaulInput.StopsAt, Say.With($"At most {MostStops} places can be stopped at in one run.")));
            return [];
        }

        return [.. parts.Select(p => Milepost(p, route)).OfType<double>()];
    }

    /// <summary>A milepost, or the name of a place.</summary>
    private double? Milepost(string text, Route route)
    {
        if (route.Places.FirstOrDefault(p => p.Name == text) is { } place)
        {
            return place.At;
        }

        if (Quantity(text, Dimension.Metre) is { } milepost)
        {
            return milepost.Si;
        }

        string hint = Nearest.DidYouMean(text, route.Places.Select(p => p.Name)) ?? Say.It("write a milepost such as `12 mi`, or the name of a place");
        return No(HaulInput.StopsAt, Say.With($"The route has no place `{text}`; {hint}"));
    }

    private static Quantity? Quantity(string text, Dimension dimension) =>
        QuantityText.TryParse(text, new SourceText("value", text).Between(0, text.Length), dimension, [], out Quantity value) ? value : null;

    private double? No(HaulInput input, string sentence)
    {
        refused.Add(new(input, sentence));
        return null;
    }
}
