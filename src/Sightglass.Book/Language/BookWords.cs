using System.Collections.Concurrent;
using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Language;
using Sightglass.Book.Assemblies;

namespace Sightglass.Book.Language;

/// <summary>
/// A book in another language: its texts by those of the author. The book itself stays as it is, so that a name means the same thing in every language; what is
/// shown to people is looked up here.
/// </summary>
public sealed partial class BookWords
{
    /// <summary>Longer texts are not looked for among those with holes.</summary>
    private const int LongestFilled = 2_000;

    /// <summary>Texts whose translation, or its lack, is kept: numbers and what people type come by as well, and there is no end of them.</summary>
    private const int MostKept = 20_000;

    /// <summary>Words for all cars of a train and for any of them, in names of what is true of it.</summary>
    private static readonly string[] s_cars = ["every car", "a car"];

    private readonly FrozenDictionary<string, BookWord> _exact;
    private readonly ImmutableArray<(Regex Pattern, BookWord Word)> _filled;
    private readonly ConcurrentDictionary<string, string?> _found = new(StringComparer.Ordinal);
    private readonly Tongue _program;

    /// <param name="program">The language of the program that this is.</param>
    /// <param name="words">Each text once.</param>
    /// <param name="cards">Cards in this language, each called as that of the book.</param>
    /// <param name="titles">What stands over cards: in the book's language and in this one. A word of its own for such a text goes before.</param>
    public BookWords(Tongue program, IEnumerable<BookWord> words, IEnumerable<SourceText>? cards = null, IEnumerable<BookWord>? titles = null)
    {
        ArgumentNullException.ThrowIfNull(program);
        _program = program;
        Words = [.. words];
        _exact = Words.Concat(titles ?? []).DistinctBy(w => w.Text).ToFrozenDictionary(w => w.Text, StringComparer.Ordinal);
        _filled = [.. Words.Where(w => Holes.Any(w.Text)).Select(w => (Pattern(w.Text), w))];
        Cards = [.. cards ?? []];
        Tongue = program.With(Find);
    }

    /// <summary>What is translated, in the order of the file.</summary>
    public ImmutableArray<BookWord> Words { get; }

    /// <summary>Cards in this language.</summary>
    public ImmutableArray<SourceText> Cards { get; }

    /// <summary>The program's language with this book's.</summary>
    public Tongue Tongue { get; }

    /// <summary>A text of the book in this language, or null.</summary>
    public string? Find(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return _found.TryGetValue(text, out string? known) ? known : _found.Count < MostKept ? _found.GetOrAdd(text, Look) : Look(text);
    }

    /// <summary>The entry that says a text, be it one with holes; null where none does.</summary>
    public BookWord? EntryOf(string text) => _exact.GetValueOrDefault(text) ?? Filled(text)?.Word ?? (Between().Match(text) is { Success: true } two ? EntryOf(two.Groups[1].Value) : null);

    /// <summary>What stands in the holes of the entry that says a text.</summary>
    internal IEnumerable<string> HolesOf(string text) => _exact.ContainsKey(text) ? [] : Filled(text)?.Given ?? [];

    /// <summary>The card of a file in this language, or null.</summary>
    public SourceText? CardOf(string name) => Cards.FirstOrDefault(c => Path.GetFileNameWithoutExtension(c.Path) == name);

    private string? Look(string text) =>
        _exact.TryGetValue(text, out BookWord? word) ? word.Says
        : Filled(text) is var (filled, holes, _) ? Holes.Fill(filled.Says, hole => holes[hole])
        : OfVehicle(text) ?? Capital(text);

    private (BookWord Word, Dictionary<string, string> Holes, IEnumerable<string> Given)? Filled(string text)
    {
        if (text.Length > LongestFilled)
        {
            return null;
        }

        foreach ((Regex pattern, BookWord word) in _filled)
        {
            if (pattern.Match(text) is { Success: true } match && Filling(match, word.Text) is { } holes)
            {
                return (word, holes, match.Groups.Values.Skip(1).Select(g => g.Value));
            }
        }

        return null;
    }

    /// <summary>What fills each hole, in this language: only what the book itself says may.</summary>
    private Dictionary<string, string>? Filling(Match match, string text)
    {
        Dictionary<string, string> holes = new(StringComparer.Ordinal);
        string[] names = [.. Holes.In(text).Distinct()];
        for (int i = 0; i < names.Length; i++)
        {
            string given = match.Groups[i + 1].Value;
            if ((_exact.GetValueOrDefault(given)?.Says ?? OfVehicle(given)) is not { } says)
            {
                return null;
            }

            holes[names[i]] = says;
        }

        return holes;
    }

    /// <summary>
    /// What belongs to a vehicle of a train: <c>brake pipe of car 3</c>, <c>brakes of car 3 are applied</c>, <c>car 3</c> (<see cref="Model.Vehicle.NameOf"/>), what lies between two of them, and
    /// what is true of every car or of one.
    /// </summary>
    private string? OfVehicle(string text) =>
        text.Length > LongestFilled ? null
        : Between().Match(text) is { Success: true } two && Find(two.Groups[1].Value) is { } joined ? In("{0} between {1} and {2}", joined, The(two.Groups[2].Value), The(two.Groups[3].Value))
        : Vehicle().Match(text) is { Success: true } one ? OfVehicle(text, one)
        : s_cars.Where(c => text.Contains(c, StringComparison.Ordinal)).Select(c => OfThisCar(text.Replace(c, Model.Vehicle.ThisCar, StringComparison.Ordinal), $"of {c}", $"to {c}", c)).FirstOrDefault(s => s is not null);

    private string? OfVehicle(string text, Match match)
    {
        string number = match.Groups[2].Value, kind = match.Groups[1].Value;
        if (match.Length == text.Length)
        {
            return In($"{kind} {{0}}", number);
        }

        string behind = $" of {match.Value}";
        return text.EndsWith(behind, StringComparison.Ordinal) && Find(text[..^behind.Length]) is { } own ? $"{own} {In($"of the {kind} {{0}}", number)}"
            : kind == "car" ? OfThisCar(text.Replace(match.Value, Model.Vehicle.ThisCar, StringComparison.Ordinal), "of the car {0}", "to the car {0}", "the car {0}", number)
            : null;
    }

    /// <summary>A name that speaks of <see cref="Model.Vehicle.ThisCar"/>, with other words for the car; those with a preposition first, because some languages write the two as one.</summary>
    private string? OfThisCar(string text, string of, string to, string car, string number = "") => Find(text)?
        .Replace(_program.Of("of this car"), In(of, number), StringComparison.Ordinal)
        .Replace(_program.Of("to this car"), In(to, number), StringComparison.Ordinal)
        .Replace(_program.Of(Model.Vehicle.ThisCar), In(car, number), StringComparison.Ordinal);

    private string The(string vehicle)
    {
        Match match = Vehicle().Match(vehicle);
        return In($"the {match.Groups[1].Value} {{0}}", match.Groups[2].Value);
    }

    private string In(string text, params object[] gaps) => string.Format(CultureInfo.InvariantCulture, _program.Of(text), gaps);

    /// <summary>A name at the beginning of a sentence.</summary>
    private string? Capital(string text) =>
        text.Length > 1 && char.IsUpper(text[0]) && _exact.GetValueOrDefault(char.ToLowerInvariant(text[0]) + text[1..]) is { } word ? Say.Begin(word.Says) : null;

    private static Regex Pattern(string text)
    {
        string[] names = [.. Holes.In(text).Distinct()];
        HashSet<string> met = new(StringComparer.Ordinal);
        string pattern = HoleInEscaped().Replace(Regex.Escape(text), m =>
        {
            string name = Regex.Unescape(m.Groups[1].Value);
            int number = Array.IndexOf(names, name) + 1;
            return met.Add(name) ? "(.+?)" : $"\\{number}";
        });
        return new($"^{pattern}$", RegexOptions.CultureInvariant | RegexOptions.Singleline, TimeSpan.FromSeconds(1));
    }

    [GeneratedRegex(@"^(.+) between ((?:car|unit) \d+) and ((?:car|unit) \d+)$", RegexOptions.CultureInvariant)]
    private static partial Regex Between();

    [GeneratedRegex(@"\b(car|unit) (\d+)\b", RegexOptions.CultureInvariant)]
    private static partial Regex Vehicle();

    [GeneratedRegex(@"\\\{([^{}]*)}", RegexOptions.CultureInvariant)]
    private static partial Regex HoleInEscaped();
}
