using System.Collections.Immutable;
using System.Globalization;
using Sightglass.Book.Model;
using Sightglass.Storage.Notes;
using Sightglass.Training.Lessons;
using Sightglass.Training.Routes;

namespace Sightglass.Web.Lesson;

/// <summary>What an address asks of a lesson; what it does not say, or says wrongly, is as usual.</summary>
/// <param name="Book">The machine.</param>
/// <param name="Shows">A purpose.</param>
internal sealed record LessonAsk(ClassBook Book, string? Shows, int? AskedPeople, int? AskedStations, int? AskedMinutes, int? AskedWords, string? AskedDepth, string? AskedAudience)
{
    private const int MostPeople = 60;
    private const int MostStations = 12;
    private const int MostMinutes = 600;
    private const int FewestWords = 40;
    private const int MostWords = 240;

    public string Purpose => RoutePurposes.Of(Book) is var all && all.Contains(Shows, StringComparer.Ordinal) ? Shows! : all.First();

    public int People => Math.Clamp(AskedPeople ?? 10, 1, MostPeople);

    public int Stations => Math.Clamp(AskedStations ?? 1, 1, MostStations);

    public int Minutes => Math.Clamp(AskedMinutes ?? 120, 1, MostMinutes);

    /// <summary>A minute, spoken by whoever teaches.</summary>
    public int Words => Math.Clamp(AskedWords ?? LessonTimes.Slowly, FewestWords, MostWords);

    public Depth Depth => Enum.TryParse(AskedDepth, ignoreCase: true, out Depth depth) && Enum.IsDefined(depth) ? depth : Depth.Operate;

    /// <summary>A role, or empty for anybody; where nothing is asked, that of the described walk.</summary>
    public string Audience => AskedAudience is not null && Book.Roles.ContainsKey(AskedAudience) ? AskedAudience
        : AskedAudience is null && Walk is { } walk ? walk.Role ?? "" : "";

    /// <summary>Whether somebody chose an audience, be it anybody: then it stays when another walk is shown.</summary>
    public bool IsAudienceChosen => AskedAudience is not null;

    /// <summary>Whom the described walk is for; null where it is not described, or for anybody.</summary>
    public string? AudienceOfWalk => Walk?.Role;

    private PlannedWalk? Walk => Book.Walks.GetValueOrDefault(Purpose);

    /// <param name="edits">Of the kept lesson.</param>
    /// <param name="defects">Asked for those of the machine.</param>
    /// <param name="day">On which it is given.</param>
    public LessonRequest Request(ImmutableArray<LessonEdit> edits, DefectDesk defects, DateOnly day) =>
        new(RoutePurposes.Find(Purpose, Book)! with { Role = Audience.Length > 0 ? Audience : null }, People, Depth)
        {
            Minutes = Minutes,
            Stations = Stations,
            Times = new() { WordsAMinute = Words },
            Audience = Audience.Length > 0 ? Audience : null,
            Kit = Walk?.Kit ?? [],
            Edits = edits,
            Defects = Book.RoadNumberInUse is { } number ? [.. defects.Of(Book, number, day)] : [],
        };

    /// <summary>As an address has it, all of it said.</summary>
    public string Query(Guid? kept)
    {
        (string Key, object? Value)[] all =
        [
            ("shows", Purpose), ("people", People), ("stations", Stations), ("minutes", Minutes), ("words", Words), ("depth", Depth.ToString().ToLowerInvariant()), ("audience", Audience), ("kept", kept?.ToString()),
        ];
        return string.Join('&', all.Where(p => p.Value is not null).Select(p => $"{p.Key}={Uri.EscapeDataString(Convert.ToString(p.Value, CultureInfo.InvariantCulture)!)}"));
    }
}
