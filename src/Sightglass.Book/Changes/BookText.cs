using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Checks;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Changes;

/// <summary>
/// The texts of a book, to be changed one value at a time. What an edit does is proved before it is given away: the file's tree with one node replaced is what
/// the new text reads as, the book has no error, and the value is the one wanted.
/// </summary>
public sealed partial class BookText
{
    private const int Longest = 20_000;

    private readonly ImmutableArray<SourceText> _yaml;
    private readonly ImmutableArray<SourceText> _cards;
    private readonly KindCatalog _kinds;
    private readonly ImmutableArray<BookCheck> _checks;
    private readonly Dictionary<SourceText, FileText> _files = [];

    /// <param name="yaml">All files of the book.</param>
    /// <param name="cards">Its cards.</param>
    /// <param name="kinds">The kinds it may use.</param>
    /// <param name="checks">Further checks that it has to pass with every change.</param>
    public BookText(IEnumerable<SourceText> yaml, IEnumerable<SourceText> cards, KindCatalog kinds, IEnumerable<BookCheck>? checks = null)
    {
        (_yaml, _cards, _kinds, _checks) = ([.. yaml], [.. cards], kinds, [.. checks ?? []]);
        DiagnosticList found = [];
        Book = BookReader.Read(_yaml, _cards, kinds, found, _checks);
        FirstError = found.FirstOrDefault(d => d.Severity == Severity.Error);
    }

    /// <summary>Null where the book has errors: then nothing can be changed.</summary>
    public ClassBook? Book { get; }

    private Diagnostic? FirstError { get; }

    /// <summary>What the book says now: the text of a key, empty where there is none, null where it is no single value or there is no such thing.</summary>
    public string? Current(BookChange change)
    {
        ArgumentNullException.ThrowIfNull(change);
        return Book is { } book && Owner(book, change) is { } owner ? Current(owner, book, change) : null;
    }

    /// <summary>The file with a change, or why there is none. Nothing is written.</summary>
    public ChangePlan Plan(BookChange change)
    {
        ArgumentNullException.ThrowIfNull(change);
        if (Book is not { } book)
        {
            return ChangePlan.No(ChangeMessages.HasErrors(FirstError!));
        }

        if (WhyNot(book, change) is { } why)
        {
            return ChangePlan.No(why);
        }

        ClassBook owner = Owner(book, change)!;
        return new ChangeEdit(book, owner, change, File).Find() is var (file, edit)
            ? Proved(change, file, edit)
            : ChangePlan.No(ChangeMessages.NotUnderstood(SpanOf(owner, change.Target)));
    }

    /// <summary>The book with a file as a plan has it.</summary>
    public BookText With(ChangedFile file)
    {
        ArgumentNullException.ThrowIfNull(file);
        SourceText after = new(file.Path, file.After);
        return new(_yaml.Any(s => s.Path == file.Path) ? _yaml.Select(s => s.Path == file.Path ? after : s) : _yaml.Append(after), _cards, _kinds, _checks);
    }

    private static string? WhyNot(ClassBook book, BookChange change)
    {
        if (change.RoadNumber is { } number && !book.RoadNumbers.ContainsKey(number))
        {
            return ChangeMessages.NoRoadNumber(number, book.RoadNumbers.Keys);
        }

        if (Owner(book, change) is not { } owner)
        {
            return ChangeMessages.NoCar(change.Car!, book.Cars.Keys);
        }

        bool isItem = owner.Items.ContainsKey(change.Target);
        if (!isItem && !owner.Places.ContainsKey(change.Target))
        {
            string where = change.Car is { } car ? $"the car `{car}`" : change.RoadNumber is { } machine ? $"road number {machine}" : "the book";
            return ChangeMessages.NoTarget(change.Target, where, owner.Items.Keys.Concat(owner.Places.Keys));
        }

        if (!isItem && (change.RoadNumber is not null || change.Property != "text"))
        {
            return change.RoadNumber is not null ? ChangeMessages.PlaceOnRoadNumber(change.Target) : ChangeMessages.PlaceHas(change.Target, change.Property);
        }

        if (change.Text is { } text && (text.Length > Longest || HasHalves(text)))
        {
            return text.Length > Longest ? ChangeMessages.TooLong(change.Property, Longest) : ChangeMessages.Unwritable(change.Property);
        }

        return Current(owner, book, change) switch
        {
            null => ChangeMessages.NotSingle(SpanOf(owner, change.Target), change.Property, "a list or a map"),
            var now when change.Was is { } was && was.ReplaceLineEndings("\n").Trim() != now => ChangeMessages.Changed(change.Target, change.Property, was.Trim(), now),
            var now when now == (change.Text ?? "") => ChangeMessages.Same(change.Target, change.Property),
            _ => null,
        };
    }

    private ChangePlan Proved(BookChange change, FileText file, TextEdit edit)
    {
        string after = edit.Apply(file.Source.Text);
        SourceText changed = new(file.Source.Path, after);
        DiagnosticList found = [];
        ClassBook? book = BookReader.Read([.. _yaml.Select(s => ReferenceEquals(s, file.Source) ? changed : s)], _cards, _kinds, found, _checks);
        if (!edit.Explains(file.Documents, FileText.Parse(changed)))
        {
            return ChangePlan.No(ChangeMessages.NotUnderstood(new(file.Source, edit.Start, 0)));
        }

        return book is null ? ChangePlan.No(ChangeMessages.WouldBeWrong(found.First(d => d.Severity == Severity.Error)))
            : Current(Owner(book, change)!, book, change) == (change.Text ?? "") ? new(new(file.Source.Path, file.Source.Text, after), null)
            : ChangePlan.No(ChangeMessages.NotEffective(change.Target, change.Property));
    }

    private FileText File(SourceText source)
    {
        if (!_files.TryGetValue(source, out FileText? file))
        {
            _files[source] = file = new(source);
        }

        return file;
    }

    /// <summary>The book that has the target: for a road number with its items.</summary>
    private static ClassBook? Owner(ClassBook book, BookChange change) => change.Car is { } car ? book.Cars.GetValueOrDefault(car)
        : change.RoadNumber is { } number && book.RoadNumbers.ContainsKey(number) ? book.For(number)
        : book;

    private static string? Current(ClassBook owner, ClassBook book, BookChange change)
    {
        if (!owner.Items.ContainsKey(change.Target))
        {
            return owner.Places.TryGetValue(change.Target, out Place? place) ? place.Text : null;
        }

        RoadNumber? number = change.RoadNumber is { } named ? book.RoadNumbers[named] : null;
        return owner.Bodies?.BodyOf(change.Target, number)?.Find(change.Property)?.Value switch
        {
            null or YamlScalar { IsNull: true } => "",
            YamlScalar s => s.Value.ReplaceLineEndings("\n").Trim(),
            _ => null,
        };
    }

    private static Span SpanOf(ClassBook owner, string target) => owner.Items.TryGetValue(target, out Item? item) ? item.Span : owner.Places[target].Span;

    private static bool HasHalves(string text)
    {
        for (int i = 0; i < text.Length; i++)
        {
            if (char.IsHighSurrogate(text[i]) && i + 1 < text.Length && char.IsLowSurrogate(text[i + 1]))
            {
                i++;
            }
            else if (char.IsSurrogate(text[i]) || text[i] == '\0')
            {
                return true;
            }
        }

        return false;
    }
}
