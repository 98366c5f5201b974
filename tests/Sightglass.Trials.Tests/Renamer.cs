using System.Text;
using System.Text.RegularExpressions;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Plant.Kinds;

namespace Sightglass.Trials.Tests;

/// <summary>
/// Gives every word of a book's declared names another one, everywhere in its files and cards: letters mirrored in the alphabet, so that names sort the
/// other way round. Words of the card language, of kinds, units and keys stay.
/// </summary>
internal sealed partial class Renamer
{
    /// <summary>Words with which cards are written, of formulas, and of the world's inputs.</summary>
    private const string Grammar = """
        a above an and any are as ask at be frame dark begin begun card caution check close closed compartment's done each every end for from give go grade cant ambient
        temperature head load speed has have heard hold if in is it keep least left let letter look most must needs never no none not notice of off on once one open
        or other out over press push put read repeat right seen set show shows side smelled start stay stays step steps stop tell than that the then there
        this car cars train unit every coupling between machine another same chock lock tag remove connect disconnect hoses crossed room
        time times to told turn turned until use value wait waited warning when where with without yes null true false min max abs
        """;

    private const string Keys = """
        book edition notice railroad length width walk starts shown places legs roles systems items facts signs hazards protections ends road numbers
        silhouettes situations text x y z from to takes by walks reacts goes medium alive kind system position label for normal cautions danger warning
        caution know operate repair photo connects is sense when protection asked faces modifications name since changes people role at start faults
        fault after chance shows scale resolution range words usual who permission told ports height positions titles title assemblies parameters assembly usual
        locks chocks bites answers unanswered measures cars trains train vehicles vehicle count turned joins mistaken gangway room asks question answer kit closed
        bets searches wanted needs within service in situation acts set says because lesson as habits lines item was here hurts pictures file marks
        routes stretches rail adhesion sanded stops grade curve radius limit holds running mass axles resistance pulls handle most power brakes planned speed force needed lost lead trail dead commands
        drills use aim tools cue events operated objectives worth critical once reports hints costs observe
        recordings recording columns column sets compares unit missing states every separator decimal time
        """;

    private readonly HashSet<string> _kept = new(StringComparer.Ordinal);
    private readonly HashSet<string> _named = new(StringComparer.Ordinal);
    private readonly Regex _yaml;

    public Renamer(ClassBook book)
    {
        Keep(Grammar);
        List<string> keys = [.. Keys.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries), "road number", "road numbers", "walk starts", "shown in",
            "reacts in", "goes to", "asked of", "set at", "connects to", "if it fails", "normal range", "in order", "in service", "runs for", "let go", "dynamic brake", "driven axles", "hand brake", "making up",
            "time limit", "stop word", "not real", "with cards", "known from", "or reported", "told as", "must never", "passes from", "solved by", "time unit", "heads in line", "rows from line"];
        foreach (var sheet in KindLibrary.Catalog.Sheets)
        {
            keys.AddRange(sheet.Parameters.Select(p => p.Name));
            Keep(string.Join(' ', sheet.Quantities.Select(q => q.Name).Concat(sheet.Positions)));
            Keep(string.Join(' ', sheet.Faults.SelectMany(f => f.Parameters.Select(p => p.Name).Append(f.Name))));
        }

        foreach (string name in NamesOf(book))
        {
            _named.UnionWith(Words().Matches(name).Select(m => m.Value.ToLowerInvariant()));
        }

        string key = string.Join('|', keys.Distinct().Where(k => k != "throttle").OrderByDescending(k => k.Length).Select(k => k == "through" ? @"through(?!: [0-9])" : Regex.Escape(k))); // a number for a position of that name is no key
        _yaml = new(
            $@"(?<=^\s*|\{{ |, |- )(?:kind|medium|shape|sense|style|faces|fault|resistance|walk starts|shown in|railroad|book): [^}}\n]*?(?=, [a-z ]+:|\s?\}}|\n)"
            + @"|^ {4}level: [a-z ]+$" // for whom a drill is
            + @"|^ {4}(?:order|must never):$" // of a drill
            + @"|\b(?:first|then)(?=: "")" // what must have been before what
            + @"|^ {6}(?:rear|front):(?=\s*$)" // sides of a car's silhouette
            + @"|\bthrottle(?=: (?:throttle|governor)\b)" // the engine's parameter: there is a handle of the same name
            + @"|\bfront(?=: [0-9])" // the area: there are places of that name
            + @"|\b(?:service|emergency)(?=: \{ automatic brake handle)" // how brakes are handled: there are positions of that name
            + @"|\bgoes to: machines\b" // every machine, not one of the book's names
            + @"|\bengine(?=: engine\b)" // what a machine pulls with: there is an item of the same name
            + $@"|(?<=^(?:   \s*)|\{{ |, |- )(?:{key}):|^(?:{key}):|(?<word>[A-Za-z]+)",
            RegexOptions.Multiline | RegexOptions.CultureInvariant);
    }

    /// <summary>Every name that a book declares and a person can write.</summary>
    public static IEnumerable<string> NamesOf(ClassBook book) =>
        book.Items.Keys.Concat(book.Places.Keys).Concat(book.Roles.Keys).Concat(book.Facts.Keys).Concat(book.Signs.Keys).Concat(book.Situations.Keys);

    public SourceText Book(SourceText text) => new(text.Path, _yaml.Replace(text.Text, Change));

    /// <summary>A card, its file too; also the letter C, which becomes K.</summary>
    public SourceText Card(SourceText text) => new(Text(text.Path), LetterC().Replace(Words().Replace(text.Text, m => Word(m.Value)), "K"));

    public string Text(string text) => Words().Replace(text, m => Word(m.Value));

    private string Change(Match match) => match.Groups["word"].Success ? Word(match.Value) : match.Value;

    private string Word(string word)
    {
        string lower = word.ToLowerInvariant();
        if (word.Length < 2 || _kept.Contains(lower) || !_named.Contains(lower))
        {
            return word;
        }

        StringBuilder mirrored = new(word.Length + 1);
        foreach (char letter in word)
        {
            mirrored.Append(char.IsUpper(letter) ? (char)('A' + 'Z' - letter) : (char)('a' + 'z' - letter));
        }

        return mirrored.Append("qx").ToString();
    }

    private void Keep(string words) => _kept.UnionWith(Words().Matches(words).Select(m => m.Value));

    [GeneratedRegex("[A-Za-z]+")]
    private static partial Regex Words();

    [GeneratedRegex(@"\bC\b")]
    private static partial Regex LetterC();
}
